// SPDX-License-Identifier: MIT
#pragma once
// The groups in which a command's options are listed, and those in which the commands are.

#include <array>

namespace platewright::cli {

/// A heading of a help page, in the order of `option_groups`.
struct OptionGroup {
  const char* title;
};

namespace group {

inline constexpr OptionGroup asked{"What is asked"};
inline constexpr OptionGroup typed{"A test typed in, without a file"};
inline constexpr OptionGroup size{"How much to make"};
inline constexpr OptionGroup pieces{"In which pieces and vessels"};
inline constexpr OptionGroup shape{"Its shape"};
inline constexpr OptionGroup shown{"What is shown"};
inline constexpr OptionGroup what_if{"What if"};
inline constexpr OptionGroup prices{"Which prices count"};
inline constexpr OptionGroup draws{"How chance is drawn"};
inline constexpr OptionGroup kitchen{"How a kitchen measures it"};
inline constexpr OptionGroup books{"What else is read"};
inline constexpr OptionGroup printed{"How it is printed"};
inline constexpr OptionGroup output{"Where it goes"};

}  // namespace group

/// Every group of options, in the order of a help page.
inline constexpr std::array option_groups{
    group::asked, group::typed,   group::size,   group::pieces,  group::shape,
    group::shown, group::what_if, group::prices, group::kitchen, group::draws,
    group::books, group::printed, group::output};

/// Who wants a command, and when.
struct CommandGroup {
  const char* title;
};

namespace command_group {

inline constexpr CommandGroup begin{"To begin"};
inline constexpr CommandGroup kitchen{"To cook"};
inline constexpr CommandGroup money{"To know what it costs, and what to charge"};
inline constexpr CommandGroup buying{"To buy"};
inline constexpr CommandGroup yields{"To test yields, and to learn"};
inline constexpr CommandGroup reference{"To check, and to look up"};
inline constexpr CommandGroup terminal{"For whoever sets up your computer"};

}  // namespace command_group

/// Every group of commands, in the order of the first page of the help.
inline constexpr std::array command_groups{
    command_group::begin,  command_group::kitchen,   command_group::money,   command_group::buying,
    command_group::yields, command_group::reference, command_group::terminal};

}  // namespace platewright::cli
