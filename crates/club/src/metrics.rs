//! How a club stands, in the text that Prometheus reads.

use crate::status::Status;
use std::fmt::Write;

/// The metrics of a status.
#[must_use]
pub fn metrics(status: &Status) -> String {
    let mut text = String::new();
    let night = |of: fn(&crate::Progress) -> i64| -> Vec<(String, f64)> {
        let one = |night: &crate::Progress| {
            (format!("{{night=\"{}\",day=\"{}\"}}", night.night, night.day), of(night) as f64)
        };
        status.nights.iter().map(one).collect()
    };
    let plain = |value: i64| vec![(String::new(), value as f64)];
    let queue = status.queue;
    for (name, help, values) in [
        ("snowhum_night_yards_asked", "Yards that a night asks about.", night(|night| night.asked)),
        ("snowhum_night_yards_done", "Yards of a night that are answered.", night(|night| night.done)),
        ("snowhum_night_yards_failed", "Yards of a night that failed.", night(|night| night.failed)),
        (
            "snowhum_night_complete",
            "Whether each yard of a night is answered or failed.",
            night(|night| night.is_complete().into()),
        ),
        ("snowhum_night_core_milliseconds", "What a night's answers cost, of one core.", night(|night| night.core_ms)),
        ("snowhum_queue_waiting", "Yards that no worker has taken.", plain(queue.waiting)),
        ("snowhum_queue_taken", "Yards that a worker has taken.", plain(queue.taken)),
        ("snowhum_workers", "Workers that said within a minute that they live.", plain(queue.workers)),
        ("snowhum_answers_per_second", "Answers a second, over five minutes.", vec![(String::new(), status.speed)]),
    ] {
        // Writing to a text cannot fail.
        let _ = writeln!(text, "# HELP {name} {help}\n# TYPE {name} gauge");
        for (labels, value) in values {
            let _ = writeln!(text, "{name}{labels} {value}");
        }
    }
    text
}

#[cfg(test)]
mod tests {
    use super::metrics;
    use crate::status::{Progress, Queue, Status};

    #[test]
    fn each_figure_stands_under_its_own_help_and_type() {
        let night = Progress {
            night: 3,
            day: "2026-01-10".to_owned(),
            asked: 5,
            done: 3,
            failed: 1,
            core_ms: 120,
            failures: Vec::new(),
        };
        let queue = Queue { waiting: 1, taken: 0, workers: 2 };
        let told = metrics(&Status { nights: vec![night], queue, speed: 0.5 });
        assert!(told.contains(
            "# HELP snowhum_night_yards_done Yards of a night that are answered.\n# TYPE snowhum_night_yards_done gauge\n\
             snowhum_night_yards_done{night=\"3\",day=\"2026-01-10\"} 3\n"
        ));
        assert!(told.ends_with("snowhum_answers_per_second 0.5\n"));
        assert_eq!(told.lines().filter(|line| line.starts_with("# TYPE")).count(), 9);
    }
}
