//! How strong a colony is against what is usual for the place and the date, from `data/spring_strength.toml`.

use jiff::civil::Date;
use serde::Deserialize;
use snowhum_apiary::{Site, bees_on};
use snowhum_say::{regions, usual as texts};
use snowhum_units::Range;

use super::answer::{Strength, StrengthWord, UsualStrength};
use super::question::SpringQuestion;
use crate::now::answer::ColonyNow;
use crate::statistics::rounded;

const SHIPPED: &str = include_str!("../../../../data/spring_strength.toml");

#[derive(Debug, Deserialize)]
struct File {
    usual: Vec<Usual>,
}

#[derive(Debug, Deserialize)]
struct Usual {
    name: String,
    region: String,
    /// Least and most latitude, least and most longitude.
    r#box: [f64; 4],
    /// First month and day, last month and day.
    from: (i8, i8),
    to: (i8, i8),
    frames: (f64, f64),
    source: String,
}

/// What is usual here at this date; none where no figure is known.
pub(super) fn usual(site: &Site, on: Date) -> Option<UsualStrength> {
    let known = toml::from_str::<File>(SHIPPED).ok()?.usual;
    let (latitude, longitude) = (site.latitude.get(), site.longitude.get());
    let fits = |usual: &&Usual| {
        let [south, north, west, east] = usual.r#box;
        (south..=north).contains(&latitude)
            && (west..=east).contains(&longitude)
            && (usual.from..=usual.to).contains(&(on.month(), on.day()))
    };
    let usual = known.iter().find(fits)?;
    Some(UsualStrength {
        region: regions::named(&usual.region).unwrap_or_default(),
        frames: usual.frames,
        says: texts::named(&usual.name).unwrap_or_default(),
        source: usual.source.clone(),
    })
}

/// A colony's strength; none where it is too unlikely to live to be described.
pub(super) fn of(question: &SpringQuestion<'_>, colony: &ColonyNow) -> Option<Strength> {
    let bees = colony.bees?;
    let apiary = question.apiary;
    let hive = apiary.colonies.iter().find(|one| one.name == colony.name).and_then(|one| apiary.hive_of(one))?;
    let on_one = bees_on(1.0, hive.mean_comb_side()).p50;
    if on_one <= 0.0 {
        return None;
    }
    let frames: Range<f64> = bees.map(|bees| rounded(bees / on_one, 1));
    let usual = usual(&apiary.site, question.now.as_of);
    let word = match usual {
        _ if frames.p50 < question.triggers.weak_frames.value => StrengthWord::VeryWeak,
        None => StrengthWord::NotKnown,
        Some(usual) if frames.p50 < usual.frames.0 => StrengthWord::BelowUsual,
        Some(usual) if frames.p50 > usual.frames.1 => StrengthWord::AboveUsual,
        Some(_) => StrengthWord::Usual,
    };
    Some(Strength { name: colony.name.clone(), bees, frames, word })
}

#[cfg(test)]
mod tests {
    use super::{File, SHIPPED, regions, texts};

    #[test]
    fn the_shipped_file_reads_and_its_ranges_rise() {
        let read = toml::from_str::<File>(SHIPPED).map(|file| file.usual).unwrap_or_default();
        assert!(!read.is_empty());
        for usual in read {
            assert!(texts::named(&usual.name).is_some() && regions::named(&usual.region).is_some(), "{}", usual.name);
            assert!(usual.frames.0 < usual.frames.1 && usual.from < usual.to && !usual.source.is_empty());
            assert!(usual.r#box[0] < usual.r#box[1] && usual.r#box[2] < usual.r#box[3], "{}", usual.region);
        }
    }
}
