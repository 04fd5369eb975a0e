//! Forecasts from live services, where the keeper asks for one.

use jiff::Timestamp;
use snowhum_advice::yard;
use snowhum_apiary::Site;
use snowhum_online::{Client, Endpoints, Forecast, OpenMeteoTerms, Position, Request, Service};
use snowhum_say::{forecast as live, weather, weather_terminal as say};
use snowhum_weather::{Ensemble, complete};

use super::{files, zone};
use crate::args::{LiveArguments, LiveService};
use crate::{exit, keep, progress};

/// Where a stand-in listens on this machine, for tests; plain http is refused anywhere else.
const STAND_IN: &str = "SNOWHUM_WEATHER_STAND_IN";

/// The forecast of the service that was named; none if none was.
///
/// # Errors
/// When there is neither a live forecast nor one kept, with why and what to do.
pub(crate) fn forecast(arguments: &LiveArguments, site: &Site) -> anyhow::Result<Option<Forecast>> {
    let Some(service) = arguments.live else { return Ok(None) };
    let terms =
        if arguments.open_meteo_not_commercial { OpenMeteoTerms::NonCommercial } else { OpenMeteoTerms::NotAccepted };
    let request = Request {
        service: match service {
            LiveService::MetNorway => Service::MetNorway,
            LiveService::Nws => Service::Nws,
            LiveService::OpenMeteo => Service::OpenMeteo,
        },
        position: Position { latitude: site.latitude, longitude: site.longitude, elevation: Some(site.elevation) },
        contact: arguments.contact.clone(),
        open_meteo_terms: terms,
    };
    let folder = keep::usual_place().and_then(|path| Some(path.parent()?.join("weather")));
    let folder = folder.ok_or_else(|| exit::failed(say::no_folder()))?;
    let fetched = Client::new(folder, endpoints()).fetch(&request, Timestamp::now());
    fetched.map(Some).map_err(|fault| exit::failed(fault.message()))
}

fn endpoints() -> Endpoints {
    let Ok(stand_in) = std::env::var(STAND_IN) else { return Endpoints::default() };
    Endpoints { met_norway: stand_in.clone(), nws: stand_in.clone(), open_meteo: stand_in }
}

/// Lays a forecast over drawn weather. Whatever goes wrong is told, and the drawn weather stands.
pub(super) fn lay_over(winter: &mut Ensemble, arguments: &LiveArguments, site: &Site) {
    let laid = forecast(arguments, site).and_then(|forecast| {
        let Some(forecast) = forecast else { return Ok(()) };
        let reading = forecast.to_reading();
        let (hourly, _) =
            complete(&reading.raw, &reading.file, yard::place(site), &zone(site)?).map_err(files::unread)?;
        let hours = snowhum_weather::lay_over(winter, &hourly);
        let provenance = &mut winter.provenance;
        let (of, standing) = (live::of(forecast.service.message()), forecast.standing.message());
        provenance.source = weather::foretold(of, hours, standing, &provenance.source);
        provenance.notes.push(format!("{}.", forecast.attribution).into());
        Ok(())
    });
    if let Err(why) = laid {
        progress::note(live::not_laid(exit::told(&why)));
    }
}
