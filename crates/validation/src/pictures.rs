//! The pictures of the page.

mod cavity;
mod cluster_heat;
mod months;
mod real;

use snowhum_winter::Parameters;

use crate::picture::Picture;
use crate::real_winters::RealWinters;
use crate::weather::Weather;

/// All of them, in the order of the page.
pub(crate) fn all(parameters: &Parameters, weather: &Weather, real: &RealWinters) -> Vec<Picture> {
    let mut pictures = vec![cluster_heat::picture(parameters), cavity::picture(parameters)];
    pictures.extend(weather.made.first().map(months::picture));
    pictures.extend(real::pictures(real));
    pictures
}
