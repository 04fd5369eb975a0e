//! Questions of the winter answered short, with the beliefs an answer corrects, from `data/questions.toml`.

use std::sync::LazyLock;

use serde::{Deserialize, Serialize};

use crate::cautions::Hazard;

/// A question.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Question {
    /// Its name in addresses.
    pub name: String,
    /// As a keeper asks it.
    pub asks: String,
    /// The answer.
    pub answer: String,
    /// The page that answers with the yard's own figures.
    pub address: String,
    /// What that page is called.
    pub page: String,
    /// The command that does.
    pub command: String,
    /// Which figure of the yard stands beside the answer.
    #[serde(default)]
    pub yard: Option<YardFigure>,
    /// What can hurt at it.
    #[serde(default)]
    pub cautions: Vec<Hazard>,
    /// Who says so.
    pub source: String,
    /// `published`, `common practice`, `from memory` or `judgement`.
    pub status: String,
    /// What is often believed otherwise.
    #[serde(default, rename = "belief")]
    pub beliefs: Vec<Belief>,
}

/// Something often believed.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Belief {
    /// As it is heard.
    pub says: String,
    /// The page on which it arises and is answered, where that is not the question's.
    #[serde(default)]
    pub address: Option<String>,
    /// What is so.
    pub truth: String,
    /// Who says so.
    pub source: String,
    /// `published`, `common practice`, `from memory` or `judgement`.
    pub status: String,
}

/// A figure of the yard that helps with a question.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum YardFigure {
    /// Chances of being alive.
    Alive,
    /// Dead bees to expect at the next look.
    Dead,
    /// Whether a lid may be lifted tomorrow.
    Lid,
    /// When food runs out.
    Hungry,
    /// Chance of new rime at the upper hole.
    Hole,
    /// The next flying day.
    Flight,
}

#[derive(Default, Deserialize)]
struct Questions {
    question: Vec<Question>,
}

static SHIPPED: LazyLock<Vec<Question>> = LazyLock::new(|| {
    let questions: Questions = toml::from_str(include_str!("../../../data/questions.toml")).unwrap_or_default();
    questions.question
});

/// The beliefs that arise on a page.
pub fn beliefs_at(address: &str) -> impl Iterator<Item = &'static Belief> {
    let all = SHIPPED.iter().flat_map(|question| question.beliefs.iter().map(move |belief| (question, belief)));
    all.filter(move |(question, belief)| question.arises_at(belief) == address).map(|(_, belief)| belief)
}

impl Question {
    /// The page on which a belief of this question arises.
    #[must_use]
    pub fn arises_at<'a>(&'a self, belief: &'a Belief) -> &'a str {
        belief.address.as_deref().unwrap_or(&self.address)
    }
}

/// Every question, in the order of the winter.
#[must_use]
pub fn questions() -> &'static [Question] {
    &SHIPPED
}

#[cfg(test)]
mod tests {
    use super::questions;
    use std::collections::BTreeSet;

    #[test]
    fn thirty_questions_and_thirty_beliefs_each_with_where_the_answer_comes_from() {
        let names: BTreeSet<&str> = questions().iter().map(|question| question.name.as_str()).collect();
        let beliefs: Vec<_> = questions().iter().flat_map(|question| &question.beliefs).collect();
        assert_eq!((questions().len(), names.len(), beliefs.len()), (30, 30, 30));
        let founded = |source: &str, status: &str| {
            !source.is_empty() && ["published", "common practice", "from memory", "judgement"].contains(&status)
        };
        assert!(questions().iter().all(|question| founded(&question.source, &question.status)));
        assert!(beliefs.iter().all(|belief| founded(&belief.source, &belief.status)));
        assert!(questions().iter().all(|question| question.answer.chars().count() < 260), "answers are short");
    }
}
