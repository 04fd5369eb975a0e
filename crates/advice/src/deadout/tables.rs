//! Causes, signs and their tables, from `data/deadout.toml`.

use serde::Deserialize;
use snowhum_say::{Message, deadout_table};
use snowhum_winter::{Parameter, Status};

use super::answer::After;
use super::net::{Net, Variable};
use crate::sums::{SumFault, shipped};

const SHIPPED: &str = include_str!("../../../../data/deadout.toml");
const TABLE: &str = "deadout.toml";
/// Hives a count of the file is out of.
const OUT_OF: f64 = 20.0;
/// Place of the cause among the variables of the network.
pub(super) const CAUSE: usize = 0;

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Tables {
    pub(super) equivalent_size: Parameter,
    pub(super) fairly_sure: Parameter,
    pub(super) sure: Parameter,
    pub(super) highest: Parameter,
    pub(super) stop: StopRule,
    pub(super) cause: Vec<Cause>,
    between: Vec<Between>,
    pub(super) sign: Vec<Sign>,
    after: Vec<AfterRow>,
    pub(super) context: ContextLines,
}

/// Lines by which the records answer for a keeper who has not looked.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct ContextLines {
    pub(super) over_line: Parameter,
    pub(super) weak: Parameter,
    pub(super) old_queen: Parameter,
}

/// Signs of foulbrood, before all others.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct StopRule {
    pub(super) sign: Vec<StopSign>,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct StopSign {
    pub(super) name: String,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Cause {
    pub(super) name: String,
    value: f64,
    #[serde(rename = "unit")]
    _unit: String,
    #[serde(rename = "source")]
    _source: String,
    #[serde(rename = "status")]
    _status: Status,
    /// Of two causes that may be, the stricter rules what is used again.
    pub(super) strictness: u8,
}

/// What lies between cause and signs, so that one fact is not counted by each sign that shows it.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
struct Between {
    name: String,
    states: Vec<String>,
    value: Vec<Vec<f64>>,
    #[serde(rename = "unit")]
    _unit: String,
    #[serde(rename = "source")]
    _source: String,
    #[serde(rename = "status")]
    _status: Status,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Sign {
    pub(super) name: String,
    given: Vec<String>,
    value: Vec<f64>,
    #[serde(rename = "unit")]
    _unit: String,
    #[serde(rename = "source")]
    _source: String,
    #[serde(rename = "status")]
    _status: Status,
    /// The cause whose rule for comb and stores it brings with it.
    pub(super) reuse_as: Option<String>,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
struct AfterRow {
    name: String,
    source: String,
    status: Status,
}

/// What is said of an entry by its name; a test finds it for each.
pub(super) fn said(name: &str) -> Message {
    deadout_table::named(name).unwrap_or_default()
}

impl Tables {
    pub(super) fn shipped() -> Result<Self, SumFault> {
        shipped(TABLE, SHIPPED)
    }

    /// Names of all signs, those of foulbrood first.
    pub(super) fn names(&self) -> impl Iterator<Item = &str> {
        let stops = self.stop.sign.iter().map(|sign| sign.name.as_str());
        stops.chain(self.sign.iter().map(|sign| sign.name.as_str()))
    }

    /// What else to do at the hive, in order.
    pub(super) fn after(&self) -> Vec<After> {
        let told = |row: &AfterRow| After {
            what: said(&row.name),
            words: said(&format!("{}-do", row.name)),
            source: row.source.clone(),
            status: row.status,
        };
        self.after.iter().map(told).collect()
    }

    /// The network: cause, what lies between, signs that are no or yes.
    pub(super) fn net(&self) -> Result<Net, SumFault> {
        let whole: f64 = self.cause.iter().map(|cause| cause.value).sum();
        let mut variables = vec![Variable {
            name: "cause".to_owned(),
            states: self.cause.len(),
            parents: Vec::new(),
            table: self.cause.iter().map(|cause| vec![cause.value / whole]).collect(),
        }];
        variables.extend(self.between.iter().map(|between| Variable {
            name: between.name.clone(),
            states: between.states.len(),
            parents: vec![CAUSE],
            table: between.value.iter().map(|row| row.iter().map(|count| count / OUT_OF).collect()).collect(),
        }));
        for sign in &self.sign {
            let place = |name: &String| variables.iter().position(|one| one.name == *name);
            let parents = sign.given.iter().map(place).collect::<Option<Vec<usize>>>();
            let parents = parents.ok_or_else(|| wrong(format!("{}: unknown parent", sign.name)))?;
            let yes: Vec<f64> = sign.value.iter().map(|count| count / OUT_OF).collect();
            let no = yes.iter().map(|chance| 1.0 - chance).collect();
            variables.push(Variable { name: sign.name.clone(), states: 2, parents, table: vec![no, yes] });
        }
        Net::new(variables).map_err(|fault| wrong(fault.to_string()))
    }
}

fn wrong(fault: String) -> SumFault {
    SumFault::Table { table: TABLE, fault }
}

#[cfg(test)]
mod tests {
    use super::{Tables, said};

    #[test]
    fn every_entry_has_its_texts() {
        let tables = Tables::shipped().unwrap();
        let of = |names: &[&String], texts: &[&str]| {
            for name in names {
                for text in texts {
                    assert!(!said(&format!("{name}{text}")).is_none(), "{name}{text}");
                }
            }
        };
        of(&tables.cause.iter().map(|cause| &cause.name).collect::<Vec<_>>(), &["", "-comb", "-stores"]);
        of(&tables.stop.sign.iter().map(|sign| &sign.name).collect::<Vec<_>>(), &["", "-seen"]);
        of(&tables.sign.iter().map(|sign| &sign.name).collect::<Vec<_>>(), &[""]);
        of(&tables.after.iter().map(|row| &row.name).collect::<Vec<_>>(), &["", "-do"]);
    }
}
