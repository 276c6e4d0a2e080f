"""check_pages.py PROGRAM EXAMPLES [BROWSER]: the pages of HTML, read by others.

Without a browser each page is read as XML by Python's expat, and what the Markdown of the same sheet
says must stand in it. With one (headless Chromium) all pages stand in frames as wide as paper, in
print's rules: nothing may be wider than the page, run, complain or be lost; and one is printed.
"""

import html
import json
import pathlib
import re
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as tree

# What is left of a sheet of A4 between margins of 14 mm, at 96 dots an inch.
PAPER_WIDTH = 687

HOSTILE = {
    "larder.yaml": """currency: USD
larder:
  </style><script>document.title = 'broken'</script>:
    buy: [{pack: 1 lb, price: 2.00}]
    allergens: [milk]
  "<img src=x onerror=x()> & \\"leek\\"":
    buy: [{pack: 1 lb, price: 3.00}]
    allergens: none
""",
    "soup.yaml": """recipe: soup</h1><script>x()</script>
with: larder.yaml
makes: 4 portions of 8 oz
ingredients:
  - </style><script>document.title = 'broken'</script>: 1 lb
  - "<img src=x onerror=x()> & \\"leek\\"": 2 oz
steps:
  - do: Sweat--><b>it</b>; Donaudampfschifffahrtsgesellschaftskapitaensmuetzenfabrikbesitzerin.
    takes: 20 min
""",
}


def commands(examples, hostile):
    supper = f"{examples}/harvest-supper/event.yaml"
    wedding = f"{examples}/mill-wedding/event.yaml"
    lamb = "lamb leg, bone-in, roasted"
    return {
        "cards": ["card", supper],
        "cards both measures": ["card", supper, "--measures", "both", "--cost"],
        "large card": ["card", f"{examples}/harvest-supper/lamb-leg.yaml", "--large"],
        "sizes": ["card", f"{examples}/harvest-supper/roast-roots.yaml", "--batches",
                  "1,2,3,4,5,6,8,10,12,15"],
        "labels": ["card", supper, "--labels"],
        "buffet": ["card", supper, "--buffet"],
        "cost": ["cost", supper],
        "quote": ["quote", supper],
        "client": ["quote", supper, "--client"],
        "guests": ["quote", supper, "--guest-table", "20,40,60,84,120"],
        "order": ["order", supper],
        "timeline": ["timeline", supper],
        "day": ["day", wedding],
        "yield": ["yield", lamb, "--buy", "12 lb", "--portion", "6 oz"],
        "tables": ["tables", "cuts", "lamb"],
        "hostile": ["card", f"{hostile}/soup.yaml"],
    }


def run_program(program, command, form):
    done = subprocess.run([program, *command, "--format", form], capture_output=True, check=False)
    if done.returncode != 0:
        sys.exit(f"{command}: {done.stderr.decode()}")
    return done.stdout.decode()


def in_plain_words(text):
    """Without what formats set between words in their own way: spaces, brackets and points."""
    return re.sub(r"[\s\u00a0|,.:()]+", "", text)


def cells_of_markdown(text):
    """What each line of a page of Markdown says, without its marks."""
    for line in text.splitlines():
        line = re.sub(r"^\s*(#+|>|-|\d+\.)\s", "", line)
        for cell in re.split(r"(?<!\\)\|", line):
            for piece in re.split(r"(?<!\\)\*\*", cell):
                piece = re.sub(r"\\(.)", r"\1", piece)
                piece = re.sub(r"^\[\d+\] ", "", piece)  # the style numbers sources
                if not re.fullmatch(r"[\s:.,>-]*", piece):
                    yield piece


def is_in_signs(cell):
    """A line of a picture, which a page draws, or what is said of its signs."""
    drawn = re.fullmatch(r"[A-Za-z+.]*\.[A-Za-z+.]*|[0-9.]*\.\.[0-9.]*", cell.strip())
    return drawn or cell.startswith("A sign is ")


class Checks:
    def __init__(self):
        self.failures = 0

    def wrong(self, what):
        print(what)
        self.failures += 1


def check_as_xml(checks, name, page, markdown):
    try:
        root = tree.fromstring(page.replace("<!DOCTYPE html>", "", 1))
    except tree.ParseError as error:
        checks.wrong(f"{name}: not well formed: {error}")
        return ""
    for element in root.iter():
        if element.tag in ("script", "link", "img", "iframe", "object", "form"):
            checks.wrong(f"{name}: has <{element.tag}>")
        for attribute, value in element.attrib.items():
            if attribute.startswith("on") or attribute == "src":
                checks.wrong(f"{name}: has {attribute}")
            if attribute == "href" and not value.startswith("#"):
                checks.wrong(f"{name}: links to {value}")
    text = in_plain_words("".join(root.find("body").itertext()))
    signs = 0
    for cell in cells_of_markdown(markdown):
        if is_in_signs(cell):
            signs += re.fullmatch(r"[\s0-9.]*|A sign is .*", cell) is None
            continue
        # A step's lines stand as one line of Markdown, and as cells of a table here.
        if in_plain_words(cell) in text:
            continue
        if any(in_plain_words(word) not in text for word in cell.split()):
            checks.wrong(f"{name}: lost {cell!r}")
    said = sum(1 for svg in root.iter("svg") if svg.get("role") == "img" and svg.get("aria-label"))
    if said < signs:
        checks.wrong(f"{name}: {signs} lines are drawn and {said} said in words")
    return text


FRAME_SCRIPT = """
const result = {};
for (const frame of document.querySelectorAll("iframe")) {
  const page = frame.contentDocument;
  const wide = [];
  const width = page.documentElement.clientWidth;
  for (const element of page.querySelectorAll("body *")) {
    const box = element.getBoundingClientRect();
    const outside = box.width > 0 && (box.right > width + 1 || box.left < -1);
    if (outside || (element.clientWidth > 0 && element.scrollWidth > element.clientWidth + 1)) {
      wide.push(element.tagName + ": " + element.textContent.slice(0, 60));
    }
  }
  result[frame.title] = {
    wide: wide.slice(0, 5), scripts: page.scripts.length, title: page.title, text: page.body.textContent,
    rows: page.querySelectorAll("tr").length};
}
const out = document.createElement("pre");
out.id = "result";
out.textContent = JSON.stringify(result);
document.body.append(out);
"""


def frame_of(name, page):
    printed = page.replace("@media print", "@media all").replace("@media screen", "@media not all")
    return (
        f'<iframe title="{html.escape(name)}" style="width: {PAPER_WIDTH}px; height: 900px"'
        f' srcdoc="{html.escape(printed)}"></iframe>\n'
    )


def run_browser(browser, arguments):
    command = [browser, "--headless", "--no-sandbox", "--disable-gpu",
               "--disable-dev-shm-usage", "--enable-logging=stderr"]
    return subprocess.run(
        [*command, *arguments], capture_output=True, check=False, timeout=120)


def check_in_browser(checks, browser, pages, texts, folder):
    whole = folder / "pages.html"
    frames = "".join(frame_of(name, page) for name, page in pages.items())
    whole.write_text(
        '<!DOCTYPE html><meta charset="utf-8"><body>' + frames +
        "<script>addEventListener('load', () => {" + FRAME_SCRIPT + "})</script>",
        encoding="utf-8")
    done = run_browser(browser, ["--virtual-time-budget=5000", "--dump-dom", whole.as_uri()])
    found = re.search(r'<pre id="result">(.*?)</pre>', done.stdout.decode(), re.DOTALL)
    if not found:
        checks.wrong("the browser shows nothing: " + done.stderr.decode()[-2000:])
        return
    for line in done.stderr.decode(errors="replace").splitlines():
        if "CONSOLE" in line:
            checks.wrong("the browser says: " + line)
    result = json.loads(html.unescape(found.group(1)))
    for name, page in pages.items():
        seen = result[name]
        for element in seen["wide"]:
            checks.wrong(f"{name}: wider than the page: {element}")
        if seen["scripts"] != 0 or seen["title"] == "broken":
            checks.wrong(f"{name}: runs a script")
        if in_plain_words(seen["text"]) != texts[name]:
            checks.wrong(f"{name}: the browser reads another text than XML has")
        if seen["rows"] != page.count("<tr"):
            checks.wrong(f"{name}: rows were lost")


def check_printed(checks, browser, page, cards, folder):
    (folder / "cards.html").write_text(page, encoding="utf-8")
    printed = folder / "cards.pdf"
    run_browser(browser, ["--no-pdf-header-footer", f"--print-to-pdf={printed}",
                          (folder / "cards.html").as_uri()])
    pages = len(re.findall(rb"/Type\s*/Page\b", printed.read_bytes())) if printed.exists() else 0
    if pages < cards:
        checks.wrong(f"{cards} cards on {pages} pages")


def main():
    program, examples = sys.argv[1:3]
    browser = sys.argv[3] if len(sys.argv) > 3 else ""
    checks = Checks()
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        for file, text in HOSTILE.items():
            (folder / file).write_text(text, encoding="utf-8")
        pages, texts = {}, {}
        for kind, command in commands(examples, folder).items():
            pages[kind] = run_program(program, command, "html")
            markdown = run_program(program, command, "markdown")
            texts[kind] = check_as_xml(checks, kind, pages[kind], markdown)
        if browser:
            check_in_browser(checks, browser, pages, texts, folder)
            check_printed(checks, browser, pages["cards"], pages["cards"].count("<article"), folder)
    print(f"{len(pages)} pages, {checks.failures} failures")
    sys.exit(1 if checks.failures else 0)


main()
