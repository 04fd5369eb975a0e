//! Air above and below in a tree-like cavity and in a wooden hive at -21 °C.

use snowhum_winter::Parameters;

use crate::cavities::{ABOVE_OVER_K, FLOOR_OVER_K, OUTSIDE_C, bare_deeps, tree};
use crate::picture::{Axis, Face, Fill, Mark, Picture, Sample, Sheet, Stroke};

pub(super) fn picture(parameters: &Parameters) -> Picture {
    let (tree, hive) = (tree(parameters), bare_deeps(parameters));
    let rows = [
        ("bare deeps, floor", hive.floor_zone.celsius(), None),
        ("bare deeps, above", hive.warm_zone.celsius(), None),
        ("tree, floor", tree.floor_zone.celsius(), Some(FLOOR_OVER_K)),
        ("tree, above", tree.warm_zone.celsius(), Some(ABOVE_OVER_K)),
    ];
    let face = Face {
        file: "tree-and-hive.svg",
        title: "Air in a tree and in a wooden hive, 2 kg of bees, −21 °C outdoors".to_owned(),
        description: format!(
            "Computed: {:.0} °C above and {:.0} °C at the floor of a cavity with 150 mm of wood round it, where {:.0} to {:.0} °C \
             and {:.0} to {:.0} °C were measured in trees; {:.0} and {:.0} °C in two bare deeps of 19 mm pine.",
            rows[3].1,
            rows[2].1,
            OUTSIDE_C + ABOVE_OVER_K[0],
            OUTSIDE_C + ABOVE_OVER_K[1],
            OUTSIDE_C + FLOOR_OVER_K[0],
            OUTSIDE_C + FLOOR_OVER_K[1],
            rows[1].1,
            rows[0].1,
        ),
    };
    let names = Axis::names("", rows.iter().map(|(name, ..)| *name));
    let mut sheet = Sheet::new(face, 150.0, Axis::numbers("air, °C", -24, 8, 4), names)
        .line(&[(OUTSIDE_C, -0.5), (OUTSIDE_C, 3.5)], Stroke::Dotted);
    for (row, (_, air_c, over_k)) in rows.into_iter().enumerate() {
        let row = row as f64;
        if let Some(over_k) = over_k {
            sheet = sheet.block(over_k.map(|k| OUTSIDE_C + k), [row - 0.28, row + 0.28], Fill::Expected);
        }
        let shown = format!("{air_c:.1} °C").replace('-', "−");
        sheet = sheet.mark((air_c, row), Mark::Disc).words((air_c + 0.5, row - 0.05), &shown);
    }
    sheet
        .key(&[
            (Sample::Mark(Mark::Disc), "computed"),
            (Sample::Area(Fill::Expected), "measured in trees (Seeley 2019)"),
            (Sample::Line(Stroke::Dotted), "outdoors"),
        ])
        .finished()
}
