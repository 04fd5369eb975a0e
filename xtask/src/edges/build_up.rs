//! Walls, lids and floors that the table covers.
//!
//! Conductivities: softwood across the grain 0.12 W/(m K) (dataholz.eu, timber of 450 kg/m3); extruded foam 0.034
//! (trade value, from memory); expanded polystyrene as hives are moulded of it 0.036 (from memory).

/// One material of a build-up.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Layer {
    /// m.
    pub(crate) thickness_m: f64,
    /// W/(m K).
    pub(crate) conductivity: f64,
}

/// Layers from the bees outwards.
#[derive(Debug, Clone, Copy)]
pub(crate) struct BuildUp {
    /// As the keeper would say it.
    pub(crate) name: &'static str,
    /// From the inside outwards.
    pub(crate) layers: &'static [Layer],
}

const PINE: f64 = 0.12;
const FOAM: f64 = 0.034;
const MOULDED: f64 = 0.036;

const PINE_19: Layer = Layer { thickness_m: 0.019, conductivity: PINE };
const PINE_22: Layer = Layer { thickness_m: 0.022, conductivity: PINE };
const PINE_12: Layer = Layer { thickness_m: 0.012, conductivity: PINE };
const MOULDED_40: Layer = Layer { thickness_m: 0.040, conductivity: MOULDED };
const FOAM_25: Layer = Layer { thickness_m: 0.025, conductivity: FOAM };
const FOAM_50: Layer = Layer { thickness_m: 0.050, conductivity: FOAM };

/// Walls.
pub(crate) const WALLS: [BuildUp; 5] = [
    BuildUp { name: "19 mm pine", layers: &[PINE_19] },
    BuildUp { name: "22 mm pine", layers: &[PINE_22] },
    BuildUp { name: "19 mm pine and 25 mm foam", layers: &[PINE_19, FOAM_25] },
    BuildUp { name: "40 mm polystyrene", layers: &[MOULDED_40] },
    BuildUp { name: "19 mm pine and 50 mm foam", layers: &[PINE_19, FOAM_50] },
];

/// Lids.
pub(crate) const LIDS: [BuildUp; 2] = [
    BuildUp { name: "19 mm board", layers: &[PINE_19] },
    BuildUp { name: "19 mm board and 50 mm foam", layers: &[PINE_19, FOAM_50] },
];

/// Solid floors.
pub(crate) const FLOORS: [BuildUp; 2] =
    [BuildUp { name: "12 mm board", layers: &[PINE_12] }, BuildUp { name: "19 mm board", layers: &[PINE_19] }];

impl BuildUp {
    /// Thickness of all layers, m.
    pub(crate) fn thickness_m(&self) -> f64 {
        self.layers.iter().map(|layer| layer.thickness_m).sum()
    }

    /// Resistance of all layers without films, m2 K/W.
    pub(crate) fn resistance(&self) -> f64 {
        self.layers.iter().map(|layer| layer.thickness_m / layer.conductivity).sum()
    }

    /// Distances from the inner face to the outer face of each layer, m, with the layer.
    pub(crate) fn depths(&self) -> Vec<(f64, Layer)> {
        let mut depth_m = 0.0;
        self.layers
            .iter()
            .map(|layer| {
                depth_m += layer.thickness_m;
                (depth_m, *layer)
            })
            .collect()
    }
}
