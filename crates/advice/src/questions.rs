//! Questions of the winter answered short, with the beliefs an answer corrects, from `data/questions.toml`.

use std::sync::LazyLock;

use serde::{Deserialize, Serialize};
use snowhum_say::{Message, questions as texts};

use crate::cautions::Hazard;

/// A question.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Question {
    /// Its name in addresses.
    pub name: String,
    /// The page that answers with the yard's own figures.
    pub address: String,
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
    /// Its name.
    pub name: String,
    /// The page on which it arises and is answered, where that is not the question's.
    #[serde(default)]
    pub address: Option<String>,
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
    /// As a keeper asks it.
    #[must_use]
    pub fn asks(&self) -> Message {
        said(&self.name, "asks")
    }

    /// The answer.
    #[must_use]
    pub fn answer(&self) -> Message {
        said(&self.name, "answer")
    }

    /// The page on which a belief of this question arises.
    #[must_use]
    pub fn arises_at<'a>(&'a self, belief: &'a Belief) -> &'a str {
        belief.address.as_deref().unwrap_or(&self.address)
    }
}

impl Belief {
    /// As it is heard.
    #[must_use]
    pub fn says(&self) -> Message {
        said(&self.name, "says")
    }

    /// What is so.
    #[must_use]
    pub fn truth(&self) -> Message {
        said(&self.name, "truth")
    }
}

/// A text of an entry; a test finds it for each.
fn said(name: &str, text: &str) -> Message {
    texts::named(&format!("{name}-{text}")).unwrap_or_default()
}

/// Every question, in the order of the winter.
#[must_use]
pub fn questions() -> &'static [Question] {
    &SHIPPED
}

#[cfg(test)]
mod tests {
    use super::questions;
    use snowhum_say::Tongue;
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
        for question in questions() {
            let answer = Tongue::BRITISH.say(&question.answer());
            assert!(
                !question.asks().is_none() && (1..260).contains(&answer.chars().count()),
                "{}: short",
                question.name
            );
        }
        assert!(beliefs.iter().all(|belief| !belief.says().is_none() && !belief.truth().is_none()));
    }
}
