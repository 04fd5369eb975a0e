//! The pictures of the page.

mod cavity;
mod cluster_heat;
mod months;

use snowhum_winter::Parameters;

use crate::picture::Picture;
use crate::weather::Weather;

/// All of them, in the order of the page.
pub(crate) fn all(parameters: &Parameters, weather: &Weather) -> Vec<Picture> {
    let mut pictures = vec![cluster_heat::picture(parameters), cavity::picture(parameters)];
    pictures.extend(weather.made.first().map(months::picture));
    pictures
}
