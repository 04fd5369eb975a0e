//! A worker in a process of its own.

use crate::house::{BUILD, model, run, worker};
use snowhum_club::Club;
use std::process::{Child, Command, Stdio};
use std::time::Duration;

/// Where the child finds the database.
const ADDRESS: &str = "SNOWHUM_TEST_CLUB";
/// How long it takes for a yard.
const TAKES: &str = "SNOWHUM_TEST_TAKES_MS";

#[test]
#[ignore = "the other half of the tests of kills, which start it in a process of its own"]
fn works_until_all_is_done_or_it_is_killed() {
    let address = std::env::var(ADDRESS).unwrap();
    let takes = Duration::from_millis(std::env::var(TAKES).unwrap().parse().unwrap());
    run(async {
        // The database may be down just now.
        let club = loop {
            match Club::open(&address).await {
                Ok(club) => break club,
                Err(_) => tokio::time::sleep(Duration::from_millis(50)).await,
            }
        };
        let done = {
            let club = club.clone();
            async move { club.all_done(BUILD.to_owned()).await }
        };
        club.work(&worker(2, model(takes)), done).await.unwrap();
    });
}

/// Starts one.
pub(crate) fn start(address: &str, takes: Duration) -> Child {
    let mut child = Command::new(std::env::current_exe().unwrap());
    child.args(["--ignored", "--exact", "workers::works_until_all_is_done_or_it_is_killed"]);
    child.env(ADDRESS, address).env(TAKES, takes.as_millis().to_string()).stdout(Stdio::null()).stderr(Stdio::null());
    child.spawn().unwrap()
}

/// Kills one outright.
pub(crate) fn kill(mut child: Child) {
    child.kill().unwrap();
    child.wait().unwrap();
}
