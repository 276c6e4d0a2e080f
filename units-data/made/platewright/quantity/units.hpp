#pragma once
// Every unit of units-data/units.yaml by name. Made by platewright_generate: change the table,
// not this file. Canonical units are g, mL, cm, cm2, s and pieces.

#include "platewright/quantity/quantity.hpp"

namespace platewright::units {

/// milligram: 1/1000 canonical units; exact.
inline constexpr NamedUnit<MassDimension> milligram{{1, 1000}, "milligram"};
/// gram: 1 canonical units; exact.
inline constexpr NamedUnit<MassDimension> gram{{1, 1}, "gram"};
/// etto: 100 canonical units; convention.
inline constexpr NamedUnit<MassDimension> etto{{100, 1}, "etto"};
/// kilogram: 1000 canonical units; exact.
inline constexpr NamedUnit<MassDimension> kilogram{{1000, 1}, "kilogram"};
/// tonne: 1000000 canonical units; exact.
inline constexpr NamedUnit<MassDimension> tonne{{1000000, 1}, "tonne"};
/// grain: 6479891/100000000 canonical units; exact.
inline constexpr NamedUnit<MassDimension> grain{{6479891, 100000000}, "grain"};
/// dram: 45359237/25600000 canonical units; exact.
inline constexpr NamedUnit<MassDimension> dram{{45359237, 25600000}, "dram"};
/// ounce: 45359237/1600000 canonical units; exact.
inline constexpr NamedUnit<MassDimension> ounce{{45359237, 1600000}, "ounce"};
/// pound: 45359237/100000 canonical units; exact.
inline constexpr NamedUnit<MassDimension> pound{{45359237, 100000}, "pound"};
/// stone: 317514659/50000 canonical units; exact.
inline constexpr NamedUnit<MassDimension> stone{{317514659, 50000}, "stone"};
/// US hundredweight: 45359237/1000 canonical units; exact.
inline constexpr NamedUnit<MassDimension> us_hundredweight{{45359237, 1000}, "US hundredweight"};
/// imperial hundredweight: 317514659/6250 canonical units; exact.
inline constexpr NamedUnit<MassDimension> imperial_hundredweight{{317514659, 6250}, "imperial hundredweight"};
/// short ton: 45359237/50 canonical units; exact.
inline constexpr NamedUnit<MassDimension> short_ton{{45359237, 50}, "short ton"};
/// long ton: 635029318/625 canonical units; exact.
inline constexpr NamedUnit<MassDimension> long_ton{{635029318, 625}, "long ton"};
/// butter stick: 45359237/400000 canonical units; convention.
inline constexpr NamedUnit<MassDimension> butter_stick{{45359237, 400000}, "butter stick"};
/// labelling ounce: 28 canonical units; exact by rule.
inline constexpr NamedUnit<MassDimension> labelling_ounce{{28, 1}, "labelling ounce"};
/// millilitre: 1 canonical units; exact.
inline constexpr NamedUnit<VolumeDimension> millilitre{{1, 1}, "millilitre"};
/// centilitre: 10 canonical units; exact.
inline constexpr NamedUnit<VolumeDimension> centilitre{{10, 1}, "centilitre"};
/// decilitre: 100 canonical units; exact.
inline constexpr NamedUnit<VolumeDimension> decilitre{{100, 1}, "decilitre"};
/// litre: 1000 canonical units; exact.
inline constexpr NamedUnit<VolumeDimension> litre{{1000, 1}, "litre"};
/// hectolitre: 100000 canonical units; exact.
inline constexpr NamedUnit<VolumeDimension> hectolitre{{100000, 1}, "hectolitre"};
/// drop: 1/20 canonical units; convention.
inline constexpr NamedUnit<VolumeDimension> drop{{1, 20}, "drop"};
/// metric teaspoon: 5 canonical units; convention.
inline constexpr NamedUnit<VolumeDimension> metric_teaspoon{{5, 1}, "metric teaspoon"};
/// metric tablespoon: 15 canonical units; convention.
inline constexpr NamedUnit<VolumeDimension> metric_tablespoon{{15, 1}, "metric tablespoon"};
/// metric cup: 250 canonical units; convention.
inline constexpr NamedUnit<VolumeDimension> metric_cup{{250, 1}, "metric cup"};
/// dessertspoon: 10 canonical units; convention.
inline constexpr NamedUnit<VolumeDimension> dessertspoon{{10, 1}, "dessertspoon"};
/// Australian teaspoon: 5 canonical units; convention.
inline constexpr NamedUnit<VolumeDimension> australian_teaspoon{{5, 1}, "Australian teaspoon"};
/// Australian tablespoon: 20 canonical units; convention.
inline constexpr NamedUnit<VolumeDimension> australian_tablespoon{{20, 1}, "Australian tablespoon"};
/// Australian cup: 250 canonical units; convention.
inline constexpr NamedUnit<VolumeDimension> australian_cup{{250, 1}, "Australian cup"};
/// Japanese teaspoon: 5 canonical units; convention.
inline constexpr NamedUnit<VolumeDimension> japanese_teaspoon{{5, 1}, "Japanese teaspoon"};
/// Japanese tablespoon: 15 canonical units; convention.
inline constexpr NamedUnit<VolumeDimension> japanese_tablespoon{{15, 1}, "Japanese tablespoon"};
/// Japanese cup: 200 canonical units; convention.
inline constexpr NamedUnit<VolumeDimension> japanese_cup{{200, 1}, "Japanese cup"};
/// labelling teaspoon: 5 canonical units; exact by rule.
inline constexpr NamedUnit<VolumeDimension> labelling_teaspoon{{5, 1}, "labelling teaspoon"};
/// labelling tablespoon: 15 canonical units; exact by rule.
inline constexpr NamedUnit<VolumeDimension> labelling_tablespoon{{15, 1}, "labelling tablespoon"};
/// labelling fluid ounce: 30 canonical units; exact by rule.
inline constexpr NamedUnit<VolumeDimension> labelling_fluid_ounce{{30, 1}, "labelling fluid ounce"};
/// labelling cup: 240 canonical units; exact by rule.
inline constexpr NamedUnit<VolumeDimension> labelling_cup{{240, 1}, "labelling cup"};
/// cubic inch: 2048383/125000 canonical units; exact.
inline constexpr NamedUnit<VolumeDimension> cubic_inch{{2048383, 125000}, "cubic inch"};
/// US minim: 157725491/2560000000 canonical units; exact.
inline constexpr NamedUnit<VolumeDimension> us_minim{{157725491, 2560000000}, "US minim"};
/// US saltspoon: 157725491/128000000 canonical units; derived.
inline constexpr NamedUnit<VolumeDimension> us_saltspoon{{157725491, 128000000}, "US saltspoon"};
/// US fluid dram: 473176473/128000000 canonical units; exact.
inline constexpr NamedUnit<VolumeDimension> us_fluid_dram{{473176473, 128000000}, "US fluid dram"};
/// US teaspoon: 157725491/32000000 canonical units; exact.
inline constexpr NamedUnit<VolumeDimension> us_teaspoon{{157725491, 32000000}, "US teaspoon"};
/// US tablespoon: 473176473/32000000 canonical units; exact.
inline constexpr NamedUnit<VolumeDimension> us_tablespoon{{473176473, 32000000}, "US tablespoon"};
/// US fluid ounce: 473176473/16000000 canonical units; exact.
inline constexpr NamedUnit<VolumeDimension> us_fluid_ounce{{473176473, 16000000}, "US fluid ounce"};
/// pony: 473176473/16000000 canonical units; convention.
inline constexpr NamedUnit<VolumeDimension> pony{{473176473, 16000000}, "pony"};
/// jigger: 1419529419/32000000 canonical units; convention.
inline constexpr NamedUnit<VolumeDimension> jigger{{1419529419, 32000000}, "jigger"};
/// US gill: 473176473/4000000 canonical units; exact.
inline constexpr NamedUnit<VolumeDimension> us_gill{{473176473, 4000000}, "US gill"};
/// US cup: 473176473/2000000 canonical units; exact.
inline constexpr NamedUnit<VolumeDimension> us_cup{{473176473, 2000000}, "US cup"};
/// US pint: 473176473/1000000 canonical units; exact.
inline constexpr NamedUnit<VolumeDimension> us_pint{{473176473, 1000000}, "US pint"};
/// US quart: 473176473/500000 canonical units; exact.
inline constexpr NamedUnit<VolumeDimension> us_quart{{473176473, 500000}, "US quart"};
/// US gallon: 473176473/125000 canonical units; exact.
inline constexpr NamedUnit<VolumeDimension> us_gallon{{473176473, 125000}, "US gallon"};
/// US dry pint: 220244188543/400000000 canonical units; exact.
inline constexpr NamedUnit<VolumeDimension> us_dry_pint{{220244188543, 400000000}, "US dry pint"};
/// US dry quart: 220244188543/200000000 canonical units; exact.
inline constexpr NamedUnit<VolumeDimension> us_dry_quart{{220244188543, 200000000}, "US dry quart"};
/// US dry gallon: 220244188543/50000000 canonical units; exact.
inline constexpr NamedUnit<VolumeDimension> us_dry_gallon{{220244188543, 50000000}, "US dry gallon"};
/// US peck: 220244188543/25000000 canonical units; exact.
inline constexpr NamedUnit<VolumeDimension> us_peck{{220244188543, 25000000}, "US peck"};
/// US bushel: 220244188543/6250000 canonical units; exact.
inline constexpr NamedUnit<VolumeDimension> us_bushel{{220244188543, 6250000}, "US bushel"};
/// heaped bushel: 1125674538969/25000000 canonical units; as printed.
inline constexpr NamedUnit<VolumeDimension> heaped_bushel{{1125674538969, 25000000}, "heaped bushel"};
/// US dry barrel: 1806673806/15625 canonical units; exact.
inline constexpr NamedUnit<VolumeDimension> us_dry_barrel{{1806673806, 15625}, "US dry barrel"};
/// cranberry barrel: 5966939679/62500 canonical units; exact.
inline constexpr NamedUnit<VolumeDimension> cranberry_barrel{{5966939679, 62500}, "cranberry barrel"};
/// fifth: 473176473/625000 canonical units; convention.
inline constexpr NamedUnit<VolumeDimension> fifth{{473176473, 625000}, "fifth"};
/// half bottle: 375 canonical units; convention.
inline constexpr NamedUnit<VolumeDimension> half_bottle{{375, 1}, "half bottle"};
/// wine bottle: 750 canonical units; convention.
inline constexpr NamedUnit<VolumeDimension> wine_bottle{{750, 1}, "wine bottle"};
/// magnum: 1500 canonical units; convention.
inline constexpr NamedUnit<VolumeDimension> magnum{{1500, 1}, "magnum"};
/// UK teaspoon: 5 canonical units; convention.
inline constexpr NamedUnit<VolumeDimension> uk_teaspoon{{5, 1}, "UK teaspoon"};
/// UK tablespoon: 15 canonical units; convention.
inline constexpr NamedUnit<VolumeDimension> uk_tablespoon{{15, 1}, "UK tablespoon"};
/// imperial teaspoon: 454609/102400 canonical units; convention.
inline constexpr NamedUnit<VolumeDimension> imperial_teaspoon{{454609, 102400}, "imperial teaspoon"};
/// imperial tablespoon: 454609/25600 canonical units; convention.
inline constexpr NamedUnit<VolumeDimension> imperial_tablespoon{{454609, 25600}, "imperial tablespoon"};
/// imperial fluid ounce: 454609/16000 canonical units; exact.
inline constexpr NamedUnit<VolumeDimension> imperial_fluid_ounce{{454609, 16000}, "imperial fluid ounce"};
/// imperial gill: 454609/3200 canonical units; exact.
inline constexpr NamedUnit<VolumeDimension> imperial_gill{{454609, 3200}, "imperial gill"};
/// UK teacup: 454609/2400 canonical units; convention.
inline constexpr NamedUnit<VolumeDimension> uk_teacup{{454609, 2400}, "UK teacup"};
/// imperial cup: 454609/1600 canonical units; convention.
inline constexpr NamedUnit<VolumeDimension> imperial_cup{{454609, 1600}, "imperial cup"};
/// imperial pint: 454609/800 canonical units; exact.
inline constexpr NamedUnit<VolumeDimension> imperial_pint{{454609, 800}, "imperial pint"};
/// imperial quart: 454609/400 canonical units; exact.
inline constexpr NamedUnit<VolumeDimension> imperial_quart{{454609, 400}, "imperial quart"};
/// imperial gallon: 454609/100 canonical units; exact.
inline constexpr NamedUnit<VolumeDimension> imperial_gallon{{454609, 100}, "imperial gallon"};
/// imperial peck: 454609/50 canonical units; exact.
inline constexpr NamedUnit<VolumeDimension> imperial_peck{{454609, 50}, "imperial peck"};
/// imperial bushel: 909218/25 canonical units; exact.
inline constexpr NamedUnit<VolumeDimension> imperial_bushel{{909218, 25}, "imperial bushel"};
/// millimetre: 1/10 canonical units; exact.
inline constexpr NamedUnit<LengthDimension> millimetre{{1, 10}, "millimetre"};
/// centimetre: 1 canonical units; exact.
inline constexpr NamedUnit<LengthDimension> centimetre{{1, 1}, "centimetre"};
/// metre: 100 canonical units; exact.
inline constexpr NamedUnit<LengthDimension> metre{{100, 1}, "metre"};
/// inch: 127/50 canonical units; exact.
inline constexpr NamedUnit<LengthDimension> inch{{127, 50}, "inch"};
/// foot: 762/25 canonical units; exact.
inline constexpr NamedUnit<LengthDimension> foot{{762, 25}, "foot"};
/// yard: 2286/25 canonical units; exact.
inline constexpr NamedUnit<LengthDimension> yard{{2286, 25}, "yard"};
/// square centimetre: 1 canonical units; exact.
inline constexpr NamedUnit<AreaDimension> square_centimetre{{1, 1}, "square centimetre"};
/// square metre: 10000 canonical units; exact.
inline constexpr NamedUnit<AreaDimension> square_metre{{10000, 1}, "square metre"};
/// square inch: 16129/2500 canonical units; exact.
inline constexpr NamedUnit<AreaDimension> square_inch{{16129, 2500}, "square inch"};
/// square foot: 580644/625 canonical units; exact.
inline constexpr NamedUnit<AreaDimension> square_foot{{580644, 625}, "square foot"};
/// second: 1 canonical units; exact.
inline constexpr NamedUnit<TimeDimension> second{{1, 1}, "second"};
/// minute: 60 canonical units; exact.
inline constexpr NamedUnit<TimeDimension> minute{{60, 1}, "minute"};
/// hour: 3600 canonical units; exact.
inline constexpr NamedUnit<TimeDimension> hour{{3600, 1}, "hour"};
/// day: 86400 canonical units; exact.
inline constexpr NamedUnit<TimeDimension> day{{86400, 1}, "day"};
/// week: 604800 canonical units; exact.
inline constexpr NamedUnit<TimeDimension> week{{604800, 1}, "week"};
/// each: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> each{{1, 1}, "each"};
/// pair: 2 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> pair{{2, 1}, "pair"};
/// half dozen: 6 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> half_dozen{{6, 1}, "half dozen"};
/// dozen: 12 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> dozen{{12, 1}, "dozen"};
/// baker's dozen: 13 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> baker_s_dozen{{13, 1}, "baker's dozen"};
/// score: 20 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> score{{20, 1}, "score"};
/// gross: 144 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> gross{{144, 1}, "gross"};
/// clove: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> clove{{1, 1}, "clove"};
/// sprig: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> sprig{{1, 1}, "sprig"};
/// leaf: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> leaf{{1, 1}, "leaf"};
/// rib: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> rib{{1, 1}, "rib"};
/// stalk: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> stalk{{1, 1}, "stalk"};
/// bunch: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> bunch{{1, 1}, "bunch"};
/// head: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> head{{1, 1}, "head"};
/// bulb: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> bulb{{1, 1}, "bulb"};
/// ear: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> ear{{1, 1}, "ear"};
/// cob: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> cob{{1, 1}, "cob"};
/// spear: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> spear{{1, 1}, "spear"};
/// floret: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> floret{{1, 1}, "floret"};
/// pod: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> pod{{1, 1}, "pod"};
/// ring: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> ring{{1, 1}, "ring"};
/// slice: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> slice{{1, 1}, "slice"};
/// wedge: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> wedge{{1, 1}, "wedge"};
/// strip: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> strip{{1, 1}, "strip"};
/// fruit half: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> fruit_half{{1, 1}, "fruit half"};
/// ball: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> ball{{1, 1}, "ball"};
/// cube: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> cube{{1, 1}, "cube"};
/// sheet: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> sheet{{1, 1}, "sheet"};
/// pat: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> pat{{1, 1}, "pat"};
/// dash: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> dash{{1, 1}, "dash"};
/// fillet: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> fillet{{1, 1}, "fillet"};
/// breast: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> breast{{1, 1}, "breast"};
/// thigh: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> thigh{{1, 1}, "thigh"};
/// drumstick: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> drumstick{{1, 1}, "drumstick"};
/// wing: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> wing{{1, 1}, "wing"};
/// leg: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> leg{{1, 1}, "leg"};
/// shoulder: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> shoulder{{1, 1}, "shoulder"};
/// rack: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> rack{{1, 1}, "rack"};
/// chop: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> chop{{1, 1}, "chop"};
/// steak: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> steak{{1, 1}, "steak"};
/// patty: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> patty{{1, 1}, "patty"};
/// link: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> link{{1, 1}, "link"};
/// bird: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> bird{{1, 1}, "bird"};
/// roast: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> roast{{1, 1}, "roast"};
/// loaf: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> loaf{{1, 1}, "loaf"};
/// crust: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> crust{{1, 1}, "crust"};
/// block: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> block{{1, 1}, "block"};
/// bar: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> bar{{1, 1}, "bar"};
/// can: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> can{{1, 1}, "can"};
/// jar: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> jar{{1, 1}, "jar"};
/// bottle: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> bottle{{1, 1}, "bottle"};
/// stick: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> stick{{1, 1}, "stick"};
/// full case: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> full_case{{1, 1}, "full case"};
/// bag: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> bag{{1, 1}, "bag"};
/// box: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> box{{1, 1}, "box"};
/// carton: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> carton{{1, 1}, "carton"};
/// container: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> container{{1, 1}, "container"};
/// package: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> package{{1, 1}, "package"};
/// packet: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> packet{{1, 1}, "packet"};
/// envelope: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> envelope{{1, 1}, "envelope"};
/// No. 6 scoop: 157725491/1000000 canonical units; as printed.
inline constexpr NamedUnit<VolumeDimension> no_6_scoop{{157725491, 1000000}, "No. 6 scoop"};
/// No. 8 scoop: 473176473/4000000 canonical units; as printed.
inline constexpr NamedUnit<VolumeDimension> no_8_scoop{{473176473, 4000000}, "No. 8 scoop"};
/// No. 10 scoop: 1419529419/16000000 canonical units; as printed.
inline constexpr NamedUnit<VolumeDimension> no_10_scoop{{1419529419, 16000000}, "No. 10 scoop"};
/// No. 12 scoop: 157725491/2000000 canonical units; as printed.
inline constexpr NamedUnit<VolumeDimension> no_12_scoop{{157725491, 2000000}, "No. 12 scoop"};
/// No. 16 scoop: 473176473/8000000 canonical units; as printed.
inline constexpr NamedUnit<VolumeDimension> no_16_scoop{{473176473, 8000000}, "No. 16 scoop"};
/// No. 20 scoop: 157725491/3200000 canonical units; as printed.
inline constexpr NamedUnit<VolumeDimension> no_20_scoop{{157725491, 3200000}, "No. 20 scoop"};
/// No. 24 scoop: 157725491/4000000 canonical units; as printed.
inline constexpr NamedUnit<VolumeDimension> no_24_scoop{{157725491, 4000000}, "No. 24 scoop"};
/// No. 30 scoop: 473176473/16000000 canonical units; as printed.
inline constexpr NamedUnit<VolumeDimension> no_30_scoop{{473176473, 16000000}, "No. 30 scoop"};
/// No. 40 scoop: 157725491/6400000 canonical units; as printed.
inline constexpr NamedUnit<VolumeDimension> no_40_scoop{{157725491, 6400000}, "No. 40 scoop"};
/// No. 50 scoop: 473176473/25600000 canonical units; as printed.
inline constexpr NamedUnit<VolumeDimension> no_50_scoop{{473176473, 25600000}, "No. 50 scoop"};
/// No. 60 scoop: 2050431383/128000000 canonical units; as printed.
inline constexpr NamedUnit<VolumeDimension> no_60_scoop{{2050431383, 128000000}, "No. 60 scoop"};
/// No. 70 scoop: 1734980401/128000000 canonical units; as printed.
inline constexpr NamedUnit<VolumeDimension> no_70_scoop{{1734980401, 128000000}, "No. 70 scoop"};
/// No. 100 scoop: 157725491/16000000 canonical units; as printed.
inline constexpr NamedUnit<VolumeDimension> no_100_scoop{{157725491, 16000000}, "No. 100 scoop"};
/// ladle of 1 fl oz: 473176473/16000000 canonical units; as printed.
inline constexpr NamedUnit<VolumeDimension> ladle_of_1_fl_oz{{473176473, 16000000}, "ladle of 1 fl oz"};
/// ladle of 2 fl oz: 473176473/8000000 canonical units; as printed.
inline constexpr NamedUnit<VolumeDimension> ladle_of_2_fl_oz{{473176473, 8000000}, "ladle of 2 fl oz"};
/// ladle of 3 fl oz: 1419529419/16000000 canonical units; as printed.
inline constexpr NamedUnit<VolumeDimension> ladle_of_3_fl_oz{{1419529419, 16000000}, "ladle of 3 fl oz"};
/// ladle of 4 fl oz: 473176473/4000000 canonical units; as printed.
inline constexpr NamedUnit<VolumeDimension> ladle_of_4_fl_oz{{473176473, 4000000}, "ladle of 4 fl oz"};
/// ladle of 6 fl oz: 1419529419/8000000 canonical units; as printed.
inline constexpr NamedUnit<VolumeDimension> ladle_of_6_fl_oz{{1419529419, 8000000}, "ladle of 6 fl oz"};
/// ladle of 8 fl oz: 473176473/2000000 canonical units; as printed.
inline constexpr NamedUnit<VolumeDimension> ladle_of_8_fl_oz{{473176473, 2000000}, "ladle of 8 fl oz"};
/// ladle of 12 fl oz: 1419529419/4000000 canonical units; as printed.
inline constexpr NamedUnit<VolumeDimension> ladle_of_12_fl_oz{{1419529419, 4000000}, "ladle of 12 fl oz"};
/// No. 300 can: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> no_300_can{{1, 1}, "No. 300 can"};
/// No. 303 can: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> no_303_can{{1, 1}, "No. 303 can"};
/// No. 1 tall can: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> no_1_tall_can{{1, 1}, "No. 1 tall can"};
/// No. 2 can: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> no_2_can{{1, 1}, "No. 2 can"};
/// No. 2 1/2 can: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> no_2_1_2_can{{1, 1}, "No. 2 1/2 can"};
/// No. 3 cylinder can: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> no_3_cylinder_can{{1, 1}, "No. 3 cylinder can"};
/// No. 5 can: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> no_5_can{{1, 1}, "No. 5 can"};
/// No. 10 can: 1 canonical units; exact.
inline constexpr NamedUnit<PiecesDimension> no_10_can{{1, 1}, "No. 10 can"};

}  // namespace platewright::units
