//! What is kept on disk, and what happens when it cannot be read or written.

use crate::bodies;
use crate::stand_in::{Reply, StandIn};
use crate::yard::{Folder, client, had, minutes_on, morning, request};
use snowhum_online::{Fault, Standing};
use snowhum_units::Degree;
use std::fs;

const FILE: &str = "met-norway_62.89_27.68_97m.json";

#[test]
fn one_file_a_place_and_no_part_of_one() {
    let replies = (0..3).map(|_| Reply::ok(bodies::met_norway()));
    let (server, folder) = (StandIn::new(replies), Folder::new());
    let client = client(&server, &folder);
    had(client.fetch(&request(), morning()));
    had(client.fetch(&request(), minutes_on(61)));
    assert_eq!(folder.files(), [FILE]);
    let mut elsewhere = request();
    elsewhere.position.latitude = Degree::new(61.0);
    assert_eq!(had(client.fetch(&elsewhere, minutes_on(62))).standing, Standing::Fresh);
    assert_eq!(folder.files(), ["met-norway_61.00_27.68_97m.json", FILE]);
}

#[test]
fn neither_the_contact_nor_the_exact_place_is_kept() {
    let (server, folder) = (StandIn::new([Reply::ok(bodies::met_norway())]), Folder::new());
    had(client(&server, &folder).fetch(&request(), morning()));
    let kept = fs::read_to_string(folder.0.join(FILE)).unwrap();
    assert!(!kept.contains("keeper@") && !kept.contains("62.892") && !kept.contains("27.678"));
}

#[test]
fn a_damaged_file_is_said_left_out_and_written_anew() {
    let whole = {
        let (server, folder) = (StandIn::new([Reply::ok(bodies::met_norway())]), Folder::new());
        had(client(&server, &folder).fetch(&request(), morning()));
        let port = server.url().rsplit(':').next().unwrap().to_owned();
        fs::read_to_string(folder.0.join(FILE)).unwrap().replace(&port, "PORT")
    };
    let body_without_air = whole.replace("air_temperature", "sir_temperature");
    let damages = [&whole[..whole.len() - 9], "", "\u{0}\u{0}", "[]", &body_without_air].map(str::to_owned);
    for damage in damages {
        let (server, folder) = (StandIn::new([Reply::status(500), Reply::ok(bodies::met_norway())]), Folder::new());
        let port = server.url().rsplit(':').next().unwrap().to_owned();
        fs::create_dir_all(&folder.0).unwrap();
        fs::write(folder.0.join(FILE), damage.replace("PORT", &port)).unwrap();
        let client = client(&server, &folder);
        let fault = client.fetch(&request(), minutes_on(5)).unwrap_err();
        let Fault::NoForecast { notes, .. } = &fault else { panic!("{fault}") };
        assert!(
            fault.to_string().contains(FILE) && notes.len() == 1 && notes[0].id() == Some("forecast-cache-damaged"),
            "{fault}"
        );
        let fresh = had(client.fetch(&request(), minutes_on(6)));
        assert_eq!(fresh.standing, Standing::Fresh);
        assert_eq!(server.asked()[1].header("If-Modified-Since"), None);
        let kept = had(client.fetch(&request(), minutes_on(7)));
        assert!(matches!(kept.standing, Standing::StillCurrent { .. }) && kept.notes.is_empty(), "{:?}", kept.notes);
    }
}

#[test]
fn a_folder_that_cannot_be_written_is_said_and_the_forecast_given() {
    let (server, folder) = (StandIn::new([Reply::ok(bodies::met_norway())]), Folder::new());
    // A file where the folder should be cannot be written into by anyone, whatever their rights.
    fs::write(&folder.0, "not a folder").unwrap();
    let forecast = had(client(&server, &folder).fetch(&request(), morning()));
    assert_eq!(forecast.standing, Standing::Fresh);
    assert!(
        forecast.notes.len() == 1 && forecast.notes[0].id() == Some("forecast-cache-unwritable"),
        "{:?}",
        forecast.notes
    );
}

#[cfg(unix)]
#[test]
fn a_folder_without_write_permission_is_said_and_the_forecast_given() {
    use std::os::unix::fs::PermissionsExt;
    let (server, folder) = (StandIn::new([Reply::ok(bodies::met_norway())]), Folder::new());
    fs::create_dir_all(&folder.0).unwrap();
    fs::set_permissions(&folder.0, fs::Permissions::from_mode(0o500)).unwrap();
    let writable_all_the_same = fs::write(folder.0.join("probe"), "").is_ok();
    let forecast = had(client(&server, &folder).fetch(&request(), morning()));
    fs::set_permissions(&folder.0, fs::Permissions::from_mode(0o700)).unwrap();
    assert_eq!(forecast.standing, Standing::Fresh);
    // Who runs as administrator may write anywhere.
    assert_eq!(forecast.notes.is_empty(), writable_all_the_same, "{:?}", forecast.notes);
}

#[test]
fn an_answer_kept_for_another_server_is_not_taken() {
    let (first, folder) = (StandIn::new([Reply::ok(bodies::met_norway())]), Folder::new());
    had(client(&first, &folder).fetch(&request(), morning()));
    let second = StandIn::new([Reply::ok(bodies::met_norway())]);
    let forecast = had(client(&second, &folder).fetch(&request(), minutes_on(1)));
    assert_eq!((forecast.standing, second.asked().len()), (Standing::Fresh, 1));
}

#[test]
fn a_clock_set_back_asks_again() {
    let (server, folder) = (StandIn::new([Reply::ok(bodies::met_norway()), Reply::status(500)]), Folder::new());
    let client = client(&server, &folder);
    had(client.fetch(&request(), minutes_on(600)));
    let back = had(client.fetch(&request(), morning()));
    assert!(matches!(back.standing, Standing::Cache { age, .. } if age.is_zero()), "{:?}", back.standing);
    assert_eq!(server.asked().len(), 2);
}
