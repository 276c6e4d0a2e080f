// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/quantity/unit.hpp.

#include "platewright/quantity/unit.hpp"

namespace platewright {

PLATEWRIGHT_BODY std::string_view dimension_name(UnitDimension dimension) {
  switch (dimension) {
    case UnitDimension::mass:
      return "weight";
    case UnitDimension::volume:
      return "capacity";
    case UnitDimension::length:
      return "length";
    case UnitDimension::area:
      return "area";
    case UnitDimension::time:
      return "time";
    case UnitDimension::pieces:
      return "a count of pieces";
  }
  return "";
}

PLATEWRIGHT_BODY std::string_view system_name(MeasuringSystem system) {
  switch (system) {
    case MeasuringSystem::us:
      return "us";
    case MeasuringSystem::imperial:
      return "imperial";
    case MeasuringSystem::metric:
      return "metric";
    case MeasuringSystem::labelling:
      return "labelling";
    case MeasuringSystem::australian:
      return "australian";
    case MeasuringSystem::japanese:
      return "japanese";
    case MeasuringSystem::any:
      return "any";
  }
  return "";
}

PLATEWRIGHT_BODY const std::string& Unit::symbol_for(const Rational& number) const {
  return number > 1 && !record_->plural.empty() ? record_->plural : record_->symbol;
}

}  // namespace platewright
