//! The functions of mathematics that every C library works out in its own way.

/// [`f64`]'s own functions of these names end in another last bit on another machine, as each asks its C library; these
/// do not. They are those of the `libm` library, in Rust alone.
///
/// Roots, sums, products, `abs` and `mul_add` are exact to the last bit everywhere and stay the standard library's.
///
/// ```
/// use snowhum_units::Same;
/// assert_eq!(2.5_f64.same_exp().to_bits(), 0x4028_5d6f_d931_e0bb);
/// ```
pub trait Same: Sized {
    /// e to this power.
    #[must_use]
    fn same_exp(self) -> Self;
    /// e to this power, less one.
    #[must_use]
    fn same_exp_m1(self) -> Self;
    /// The natural logarithm.
    #[must_use]
    fn same_ln(self) -> Self;
    /// The natural logarithm of one more.
    #[must_use]
    fn same_ln_1p(self) -> Self;
    /// The logarithm to base 2.
    #[must_use]
    fn same_log2(self) -> Self;
    /// The logarithm to base 10.
    #[must_use]
    fn same_log10(self) -> Self;
    /// This to a power.
    #[must_use]
    fn same_powf(self, power: Self) -> Self;
    /// The cube root.
    #[must_use]
    fn same_cbrt(self) -> Self;
    /// The longest side of a right-angled triangle.
    #[must_use]
    fn same_hypot(self, other: Self) -> Self;
    /// The sine, of radians.
    #[must_use]
    fn same_sin(self) -> Self;
    /// The cosine, of radians.
    #[must_use]
    fn same_cos(self) -> Self;
    /// Sine and cosine, of radians.
    #[must_use]
    fn same_sin_cos(self) -> (Self, Self);
    /// The angle of this sine, in radians.
    #[must_use]
    fn same_asin(self) -> Self;
    /// The angle of this cosine, in radians.
    #[must_use]
    fn same_acos(self) -> Self;
    /// The angle of a point, this up and `x` to the right, in radians.
    #[must_use]
    fn same_atan2(self, x: Self) -> Self;
}

impl Same for f64 {
    #[inline]
    fn same_exp(self) -> Self {
        libm::exp(self)
    }
    #[inline]
    fn same_exp_m1(self) -> Self {
        libm::expm1(self)
    }
    #[inline]
    fn same_ln(self) -> Self {
        libm::log(self)
    }
    #[inline]
    fn same_ln_1p(self) -> Self {
        libm::log1p(self)
    }
    #[inline]
    fn same_log2(self) -> Self {
        libm::log2(self)
    }
    #[inline]
    fn same_log10(self) -> Self {
        libm::log10(self)
    }
    #[inline]
    fn same_powf(self, power: Self) -> Self {
        libm::pow(self, power)
    }
    #[inline]
    fn same_cbrt(self) -> Self {
        libm::cbrt(self)
    }
    #[inline]
    fn same_hypot(self, other: Self) -> Self {
        libm::hypot(self, other)
    }
    #[inline]
    fn same_sin(self) -> Self {
        libm::sin(self)
    }
    #[inline]
    fn same_cos(self) -> Self {
        libm::cos(self)
    }
    #[inline]
    fn same_sin_cos(self) -> (Self, Self) {
        libm::sincos(self)
    }
    #[inline]
    fn same_asin(self) -> Self {
        libm::asin(self)
    }
    #[inline]
    fn same_acos(self) -> Self {
        libm::acos(self)
    }
    #[inline]
    fn same_atan2(self, x: Self) -> Self {
        libm::atan2(self, x)
    }
}

#[cfg(test)]
mod tests {
    use super::Same;

    #[test]
    fn each_is_what_its_name_says_but_for_the_last_bits() {
        for step in 1..2_000 {
            let x = f64::from(step) * 5e-3;
            let inner = x / 10.0;
            let pairs = [
                (x.same_exp(), x.exp()),
                (inner.same_exp_m1(), inner.exp_m1()),
                (x.same_ln(), x.ln()),
                (inner.same_ln_1p(), inner.ln_1p()),
                (x.same_log2(), x.log2()),
                (x.same_log10(), x.log10()),
                (x.same_powf(1.7), x.powf(1.7)),
                (x.same_cbrt(), x.cbrt()),
                (x.same_hypot(3.0), x.hypot(3.0)),
                (x.same_sin(), x.sin()),
                (x.same_cos(), x.cos()),
                (x.same_sin_cos().0 + 2.0 * x.same_sin_cos().1, x.sin() + 2.0 * x.cos()),
                (inner.same_asin(), inner.asin()),
                (inner.same_acos(), inner.acos()),
                (x.same_atan2(-2.0), x.atan2(-2.0)),
            ];
            for (at, (own, other)) in pairs.into_iter().enumerate() {
                assert!((own - other).abs() <= 1e-14 * other.abs().max(1.0), "{at} of {x}: {own} {other}");
            }
        }
    }
}
