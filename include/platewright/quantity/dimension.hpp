// SPDX-License-Identifier: MIT
#pragma once
// The dimensions a kitchen deals in. Boost.Units supplies the algebra and nothing else.

#include <boost/mpl/divides.hpp>
#include <boost/mpl/times.hpp>
#include <boost/units/base_dimension.hpp>
#include <boost/units/derived_dimension.hpp>
#include <boost/units/dimension.hpp>
#include <boost/units/physical_dimensions/area.hpp>
#include <boost/units/physical_dimensions/length.hpp>
#include <boost/units/physical_dimensions/mass.hpp>
#include <boost/units/physical_dimensions/temperature.hpp>
#include <boost/units/physical_dimensions/time.hpp>
#include <boost/units/physical_dimensions/volume.hpp>
#include <type_traits>

namespace platewright {

namespace detail {
/// Money and pieces are base dimensions of our own; the numbers only have to be unique.
struct MoneyBase : boost::units::base_dimension<MoneyBase, 7301> {};
struct PiecesBase : boost::units::base_dimension<PiecesBase, 7302> {};

template <class Left, class Right>
using times = typename boost::mpl::times<Left, Right>::type;
template <class Left, class Right>
using divides = typename boost::mpl::divides<Left, Right>::type;
}  // namespace detail

// Each dimension is a tag of its own, so that a compiler's message names it in one word. `Algebra`
// is the Boost.Units dimension that products and quotients are worked out on.

/// Weight, held in grams.
struct MassDimension {
  using Algebra = boost::units::mass_dimension;
};
/// Capacity, held in millilitres.
struct VolumeDimension {
  using Algebra = boost::units::volume_dimension;
};
/// Length, held in centimetres.
struct LengthDimension {
  using Algebra = boost::units::length_dimension;
};
/// Area, held in square centimetres.
struct AreaDimension {
  using Algebra = boost::units::area_dimension;
};
/// Time, held in seconds.
struct TimeDimension {
  using Algebra = boost::units::time_dimension;
};
/// Things that are counted, held in pieces.
struct PiecesDimension {
  using Algebra = detail::PiecesBase::dimension_type;
};
/// Money, held in whole units of the book's currency.
struct MoneyDimension {
  using Algebra = detail::MoneyBase::dimension_type;
};
/// A step between two temperatures, held in kelvins. A temperature itself is `Temperature`.
struct TemperatureStepDimension {
  using Algebra = boost::units::temperature_dimension;
};
/// Mass per volume, held in grams per millilitre.
struct DensityDimension {
  using Algebra = detail::divides<MassDimension::Algebra, VolumeDimension::Algebra>;
};
/// Mass per piece, held in grams.
struct PieceWeightDimension {
  using Algebra = detail::divides<MassDimension::Algebra, PiecesDimension::Algebra>;
};
/// Money per mass, held in currency units per gram.
struct PricePerMassDimension {
  using Algebra = detail::divides<MoneyDimension::Algebra, MassDimension::Algebra>;
};
/// Money per volume, held in currency units per millilitre.
struct PricePerVolumeDimension {
  using Algebra = detail::divides<MoneyDimension::Algebra, VolumeDimension::Algebra>;
};
/// Money per piece.
struct PricePerPieceDimension {
  using Algebra = detail::divides<MoneyDimension::Algebra, PiecesDimension::Algebra>;
};
/// Money per time, held in currency units per second (a wage).
struct PricePerTimeDimension {
  using Algebra = detail::divides<MoneyDimension::Algebra, TimeDimension::Algebra>;
};
/// A product that has no name here, called by its factors, so that a message can name them. Two
/// such products add up only where they were made in the same order.
template <class Left, class Right>
struct ProductOf {
  using Algebra = detail::times<typename Left::Algebra, typename Right::Algebra>;
};
/// A quotient that has no name here.
template <class Left, class Right>
struct QuotientOf {
  using Algebra = detail::divides<typename Left::Algebra, typename Right::Algebra>;
};

namespace detail {

template <class Unnamed, class... Tags>
struct OwnerAmong {
  using type = Unnamed;
};
template <class Unnamed, class Tag, class... Tags>
struct OwnerAmong<Unnamed, Tag, Tags...> {
  using type =
      typename std::conditional_t<std::is_same_v<typename Unnamed::Algebra, typename Tag::Algebra>,
                                  std::type_identity<Tag>, OwnerAmong<Unnamed, Tags...>>::type;
};

/// The tag that owns the algebra of a product or quotient, so that money / mass * mass is money
/// again; the product itself where none does.
template <class Unnamed>
using Owner = typename OwnerAmong<Unnamed, MassDimension, VolumeDimension, LengthDimension,
                                  AreaDimension, TimeDimension, PiecesDimension, MoneyDimension,
                                  TemperatureStepDimension, DensityDimension, PieceWeightDimension,
                                  PricePerMassDimension, PricePerVolumeDimension,
                                  PricePerPieceDimension, PricePerTimeDimension>::type;

template <class Unnamed>
inline constexpr bool is_bare =
    std::is_same_v<typename Unnamed::Algebra, boost::units::dimensionless_type>;

}  // namespace detail

/// The dimension of a product.
template <class Left, class Right>
using ProductDimension = detail::Owner<ProductOf<Left, Right>>;

/// The dimension of a quotient.
template <class Left, class Right>
using QuotientDimension = detail::Owner<QuotientOf<Left, Right>>;

}  // namespace platewright
