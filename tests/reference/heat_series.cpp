// SPDX-License-Identifier: MIT
// The middle of a body against the one-term series of transient conduction. Coefficients: Y. A.
// Cengel, Heat Transfer: A Practical Approach, table 4-1 of the one-term approximation (the same
// figures in F. P. Incropera and others, Fundamentals of Heat and Mass Transfer, table 5.1), typed
// from memory; a test below holds each against the equation that it is a root of.

#include <cmath>
#include <vector>

#include "platewright/heat/conducting_body.hpp"
#include "support/catch.hpp"

using namespace platewright;

namespace {

struct Term {
  double root;
  double factor;
};

struct SeriesRow {
  double biot;
  Term slab;
  Term cylinder;
  Term sphere;
};

const std::vector<SeriesRow>& series() {
  static const std::vector<SeriesRow> rows{
      {0.1, {0.3111, 1.0161}, {0.4417, 1.0246}, {0.5423, 1.0298}},
      {0.5, {0.6533, 1.0701}, {0.9408, 1.1143}, {1.1656, 1.1441}},
      {1.0, {0.8603, 1.1191}, {1.2558, 1.2071}, {1.5708, 1.2732}},
      {2.0, {1.0769, 1.1785}, {1.5995, 1.3384}, {2.0288, 1.4793}},
      {5.0, {1.3138, 1.2403}, {1.9898, 1.5029}, {2.5704, 1.7870}},
      {10.0, {1.4289, 1.2620}, {2.1795, 1.5677}, {2.8363, 1.9249}},
      {100.0, {1.5552, 1.2731}, {2.3809, 1.6015}, {3.1102, 1.9990}}};
  return rows;
}

const Term& term(const SeriesRow& row, int exponent) {
  return exponent == 0 ? row.slab : exponent == 1 ? row.cylinder : row.sphere;
}

/// The zeroth and first Bessel functions of the first kind.
double bessel(int order, double x) {
  double out = 0;
  double part = order == 0 ? 1 : x / 2;
  for (int k = 0; k < 40; ++k) {
    out += part;
    part *= -x * x / 4 / ((k + 1.0) * (k + 1.0 + order));
  }
  return out;
}

/// What the root of the table has to make 0.
double equation(int exponent, double biot, double root) {
  if (exponent == 0) return root * std::tan(root) - biot;
  if (exponent == 1) return root * bessel(1, root) - biot * bessel(0, root);
  return 1 - root / std::tan(root) - biot;
}

/// How the temperature falls from the middle to the surface.
double at_surface(int exponent, double root) {
  if (exponent == 0) return std::cos(root);
  if (exponent == 1) return bessel(0, root);
  return std::sin(root) / root;
}

/// A body of radius 1 and diffusivity 1 that was at 1 and is put into surroundings at 0.
ConductingBody cooled(int exponent, double biot, double fourier) {
  ConductingBody body({1, static_cast<double>(exponent)}, {1, 1, 1}, 1);
  const double steps = std::ceil(fourier / body.longest_step());
  for (auto left = static_cast<int>(steps); left > 0; --left) body.step(fourier / steps, {0, biot});
  return body;
}

}  // namespace

TEST_CASE("the printed roots are roots") {
  for (const SeriesRow& row : series()) {
    for (const int exponent : {0, 1, 2}) {
      INFO("Biot " << row.biot << ", exponent " << exponent);
      const double root = term(row, exponent).root;
      const double low = equation(exponent, row.biot, root - 6e-5);
      const double high = equation(exponent, row.biot, root + 6e-5);
      CHECK(low * high <= 0);
    }
  }
}

TEST_CASE("slab, long cylinder and sphere follow the series to 1e-3") {
  // From Fourier numbers of 0.6 on the terms that are left out are below 2e-4.
  for (const SeriesRow& row : series()) {
    for (const int exponent : {0, 1, 2}) {
      for (const double fourier : {0.6, 1.0, 2.0}) {
        INFO("Biot " << row.biot << ", exponent " << exponent << ", Fourier " << fourier);
        const Term& first = term(row, exponent);
        const double middle = first.factor * std::exp(-first.root * first.root * fourier);
        const ConductingBody body = cooled(exponent, row.biot, fourier);
        CHECK(std::abs(body.core() - middle) < 1e-3);
        const double surface = middle * at_surface(exponent, first.root);
        CHECK(std::abs(body.surface({0, row.biot}) - surface) < 1e-3);
      }
    }
  }
}

TEST_CASE("a wall with a fast surface follows the series of Fourier from the start") {
  // H. S. Carslaw and J. C. Jaeger, Conduction of Heat in Solids, 3.3: all terms, surface held at
  // 0.
  for (const double fourier : {0.02, 0.05, 0.1, 0.2}) {
    double middle = 0;
    for (int n = 0; n < 60; ++n) {
      const double odd = 2.0 * n + 1;
      const double decay = odd * std::acos(-1.0) / 2;
      middle +=
          (n % 2 == 0 ? 1 : -1) * 4 / (std::acos(-1.0) * odd) * std::exp(-decay * decay * fourier);
    }
    INFO("Fourier " << fourier);
    CHECK(std::abs(cooled(0, 1e7, fourier).core() - middle) < 1e-3);
  }
}

TEST_CASE("a cylinder with ends lies between the two ways of leaving them out") {
  // Product solution of a short cylinder: Cengel, 4-4, multidimensional systems. Its ends are
  // `half_length` radii from the middle; Biot numbers of wall and cylinder from one exchange.
  const Term wall_two{1.0769, 1.1785};      // Biot 2
  const Term wall_five{1.3138, 1.2403};     // Biot 5
  const Term cylinder_one{1.2558, 1.2071};  // Biot 1
  struct Case {
    double half_length;
    double biot;
    Term cylinder;
    Term wall;
  };
  for (const Case& body :
       {Case{2, 1, cylinder_one, wall_two}, Case{5, 1, cylinder_one, wall_five}}) {
    for (const double fourier : {0.6, 1.0}) {
      const double along = fourier / (body.half_length * body.half_length);
      // The wall's own series from its start, as its Fourier number is small.
      const double middle = body.cylinder.factor *
                            std::exp(-body.cylinder.root * body.cylinder.root * fourier) *
                            cooled(0, body.biot * body.half_length, along).core();
      const auto core = [&](double exponent) {
        ConductingBody model({1, exponent}, {1, 1, 1}, 1);
        const double steps = std::ceil(fourier / model.longest_step());
        for (auto left = static_cast<int>(steps); left > 0; --left) {
          model.step(fourier / steps, {0, body.biot});
        }
        return model.core();
      };
      INFO("half length " << body.half_length << ", Fourier " << fourier);
      CHECK(core(1) > middle);
      CHECK(core(1 + 1 / body.half_length) < middle);
    }
  }
}
