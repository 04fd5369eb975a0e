//! Sets of figures that a run may vary, by name.

use crate::FigureFault;
use std::sync::OnceLock;

/// A copy of what is read once and kept: a served page asks for a set each time.
///
/// # Errors
/// Those of the reading.
pub fn once<T: Clone>(kept: &OnceLock<T>, read: impl FnOnce() -> Result<T, FigureFault>) -> Result<T, FigureFault> {
    if let Some(kept) = kept.get() {
        return Ok(kept.clone());
    }
    let read = read()?;
    Ok(kept.get_or_init(|| read).clone())
}

/// Makes a set of figures, one field each, that is read from a file with exactly these entries.
///
/// ```
/// snowhum_figures::figures! {
///     /// How deep it lies.
///     Depths: frost snow
/// }
/// let entry = |name: &str, high: f64| {
///     let range = format!("value = 1\nlow = 0.5\nhigh = {high}");
///     format!("[parameter.{name}]\n{range}\nunit = \"m\"\nsource = \"none\"\nstatus = \"judgement\"\n")
/// };
/// let whole = entry("frost", 2.0) + &entry("snow", 3.0);
/// assert_eq!(Depths::read(&whole).unwrap().snow.high, Some(3.0));
/// let fault = |text: &str| Depths::read(text).unwrap_err().to_string();
/// assert!(fault(&entry("frost", 2.0)).contains("snow is missing"));
/// assert!(fault(&(whole + &entry("hail", 2.0))).contains("hail is not known"));
/// assert!(fault(&entry("frost", 0.9)).contains("frost: low, value and high"));
/// ```
#[macro_export]
macro_rules! figures {
    ($(#[$about:meta])* $set:ident: $($name:ident)*) => { $crate::figures! { $(#[$about])* $set with {}: $($name)* } };
    ($(#[$about:meta])* $set:ident with { $($beside:ident: $kind:ty)? }: $($name:ident)*) => {
        $(#[$about])*
        #[derive(Debug, Clone, PartialEq)]
        #[expect(missing_docs, reason = "each field is documented where it is defined, in the file it is read from")]
        pub struct $set {
            $(pub $name: $crate::Figure,)*
            $(pub $beside: $kind,)?
        }

        impl $set {
            /// Names in the order of the set.
            pub const NAMES: &'static [&'static str] = &[$(stringify!($name)),*];

            /// Reads a file of these figures.
            ///
            /// # Errors
            /// When the text is not TOML, a figure is missing, unknown or its range out of order.
            pub fn read(text: &str) -> Result<Self, $crate::FigureFault> {
                let mut file = $crate::FigureFile::read(text)?;
                let read = Self { $($name: file.take(stringify!($name))?,)* $($beside: <$kind>::default(),)? };
                file.finish()?;
                Ok(read)
            }

            /// A figure by its name.
            pub fn get_mut(&mut self, name: &str) -> Option<&mut $crate::Figure> {
                $(if name == stringify!($name) {
                    return Some(&mut self.$name);
                })*
                None
            }

            /// Every figure with its name.
            pub fn iter(&self) -> impl Iterator<Item = (&'static str, &$crate::Figure)> {
                [$((stringify!($name), &self.$name)),*].into_iter()
            }
        }
    };
}
