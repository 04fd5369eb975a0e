//! How wide the vectors are that the laws are worked out with.

/// A width of vectors. The answers are the same to the last bit with each (tested): a narrower one is for measuring.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Vectors {
    /// The widest the machine has.
    Widest,
    /// 256 bits, where the machine has them and wider; else the widest.
    Bits256,
    /// Those that every machine of its kind has: 128 bits.
    Least,
}

impl Vectors {
    /// Does `work`, compiled for this width.
    #[inline(always)]
    pub(crate) fn dispatch<W: pulp::NullaryFnOnce>(self, work: W) -> W::Output {
        self.arch().dispatch(work)
    }

    fn arch(self) -> pulp::Arch {
        match self {
            Self::Widest => pulp::Arch::new(),
            Self::Bits256 => bits256(),
            Self::Least => pulp::Arch::Scalar,
        }
    }
}

#[cfg(target_arch = "x86_64")]
fn bits256() -> pulp::Arch {
    pulp::x86::V3::try_new().map_or_else(pulp::Arch::new, pulp::Arch::V3)
}

#[cfg(not(target_arch = "x86_64"))]
fn bits256() -> pulp::Arch {
    pulp::Arch::new()
}
