//! Reading what callgrind writes.

use std::collections::HashMap;

/// The total of all instructions.
pub(super) fn total(text: &str) -> Option<u64> {
    let line = text.lines().find_map(|line| line.strip_prefix("totals:").or(line.strip_prefix("summary:")))?;
    line.split_whitespace().next()?.parse().ok()
}

/// Instructions of one call of a function with all that it calls, as a mean over its calls; `None` if it was never
/// called. The function is the one whose name has `module` in it and ends with `name`.
pub(super) fn of_one_call(text: &str, module: &str, name: &str) -> Option<u64> {
    let mut names: HashMap<&str, bool> = HashMap::new();
    let (mut is_meant, mut calls, mut instructions) = (false, 0, 0);
    let mut costs_follow = None;
    for line in text.lines() {
        if let Some(called) = line.strip_prefix("cfn=") {
            is_meant = meant(&mut names, called, module, name);
        } else if let Some(own) = line.strip_prefix("fn=") {
            meant(&mut names, own, module, name);
        } else if let Some(call) = line.strip_prefix("calls=") {
            costs_follow = first_number(call).filter(|_| is_meant);
        } else if let Some(times) = costs_follow.take() {
            calls += times;
            instructions += line.split_whitespace().nth(1)?.parse::<u64>().ok()?;
        }
    }
    (calls > 0).then(|| instructions / calls)
}

fn first_number(text: &str) -> Option<u64> {
    text.split_whitespace().next()?.parse().ok()
}

/// Whether `(number) name`, or a `(number)` that was named before, is the function asked for.
fn meant<'a>(names: &mut HashMap<&'a str, bool>, written: &'a str, module: &str, name: &str) -> bool {
    match written.split_once(' ') {
        Some((number, full)) => {
            let is_it = full.contains(module) && full.ends_with(name);
            names.insert(number, is_it);
            is_it
        }
        None => names.get(written).copied().unwrap_or(false),
    }
}

#[cfg(test)]
mod tests {
    use super::{of_one_call, total};

    const PROFILE: &str = "\
events: Ir
fn=(1) main
0 12
cfn=(2) house::yard::Strata<A,D>::resample
calls=2 0
0 600
cfn=(3) house::yard::resample_nothing
calls=9 0
* 90000
cfn=(2)
calls=1 +4
+4 330

fn=(2)
0 930
totals: 2721796534
";

    #[test]
    fn the_total_is_read_from_what_callgrind_writes() {
        assert_eq!(total(PROFILE), Some(2_721_796_534));
        assert_eq!(total("events: Ir\n"), None);
    }

    #[test]
    fn a_call_is_the_mean_over_all_calls_from_everywhere() {
        assert_eq!(of_one_call(PROFILE, "house::yard", "::resample"), Some(310));
    }

    #[test]
    fn what_was_never_called_has_no_count() {
        assert_eq!(of_one_call(PROFILE, "house::field", "::resample"), None);
        assert_eq!(of_one_call(PROFILE, "main", "main"), None);
    }
}
