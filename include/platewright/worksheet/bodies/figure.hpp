// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/worksheet/figure.hpp.

#include <type_traits>

#include "platewright/worksheet/figure.hpp"

namespace platewright {

namespace detail {

template <class Type>
inline constexpr bool is_figure = std::is_same_v<Type, Rational> || std::is_same_v<Type, Mass> ||
                                  std::is_same_v<Type, Money> || std::is_same_v<Type, PricePerMass>;

/// The result where it is a figure; nothing for money times money and the like.
template <class Result>
std::optional<Figure> as_figure(const Result& result) {
  if constexpr (is_figure<Result>) return Figure(result);
  return std::nullopt;
}

template <class Left, class Right>
std::optional<Figure> carried_out(Operation operation, const Left& left, const Right& right) {
  switch (operation) {
    // Of two unlike figures neither a sum nor a difference is one.
    // NOLINTNEXTLINE(bugprone-branch-clone): the branches differ where the types are alike.
    case Operation::add:
      if constexpr (std::is_same_v<Left, Right>) return as_figure<Left>(left + right);
      return std::nullopt;
    case Operation::subtract:
      if constexpr (std::is_same_v<Left, Right>) return as_figure<Left>(left - right);
      return std::nullopt;
    case Operation::multiply:
      return as_figure(left * right);
    case Operation::divide:
      if (right == Right{}) return std::nullopt;
      if constexpr (std::is_same_v<Left, Rational> && !std::is_same_v<Right, Rational>) {
        return std::nullopt;
      } else {
        return as_figure(left / right);
      }
  }
  return std::nullopt;
}

}  // namespace detail

PLATEWRIGHT_BODY std::optional<Figure> carry_out(Operation operation, const Figure& left,
                                                 const Figure& right) {
  return std::visit(
      [operation](const auto& one, const auto& other) {
        return detail::carried_out(operation, one, other);
      },
      left, right);
}

PLATEWRIGHT_BODY std::optional<Rational> ratio_of(const Figure& whole, const Figure& part) {
  if (whole.index() != part.index()) return std::nullopt;
  const auto quotient = carry_out(Operation::divide, whole, part);
  return quotient ? std::optional(std::get<Rational>(*quotient)) : std::nullopt;
}

}  // namespace platewright
