//! The sheets as files that need nothing beside them.

use maud::{DOCTYPE, Markup, PreEscaped, html};
use snowhum_say::{Message, paper_page as text, round_page};
use std::time::Duration;

use crate::app::App;
use crate::assets;
use crate::page::{age, fit_for_a_phone};
use crate::pages::{paper, sheet, treatments};
use crate::view::View;

/// How often is looked whether the estimate is there.
const LOOK: Duration = Duration::from_millis(50);

/// A sheet.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Paper {
    /// Its name as a file.
    pub file: &'static str,
    /// The whole of it, as HTML.
    pub html: String,
}

impl App {
    /// Every sheet, once the estimate is there; [`App::work`] must be running. Cards carry a code if the address that
    /// the pages are served at is given, such as `https://192.0.2.7:8462`.
    ///
    /// # Errors
    /// When the records or the model cannot answer, in words for the keeper.
    pub async fn papers(&self, address: Option<&str>) -> Result<Vec<Paper>, Message> {
        let view = self.settled_view().await?;
        let ever = self.apiary_ever().await.map_err(|fault| fault.message())?;
        let record = snowhum_advice::treatments::treatments(&ever, view.now.date());
        let tongue = view.tongue();
        let (record, its_title) = (treatments::sheet(&record, tongue), tongue.say(&text::treatments()));
        let sheets = [
            ("yard.html", text::yard(), paper::yard_sheet(&view)),
            ("round.html", round_page::pencil(), sheet::sheet(&view)),
            ("cards.html", text::cards(), paper::cards_sheet(&view, address)),
            ("treatments.html", text::treatments(), html! { h1 { (its_title) } (record) }),
            ("season.html", text::season(), paper::season_sheet(&view)),
        ];
        let paper = |(file, title, body)| {
            let html = alone(&view, &tongue.say(&title), &body).into_string();
            Paper { file, html }
        };
        Ok(sheets.map(paper).to_vec())
    }

    async fn settled_view(&self) -> Result<View, Message> {
        loop {
            let view = View::of(self).await.map_err(|fault| fault.says())?;
            if let Some(trouble) = view.trouble {
                return Err(trouble);
            }
            if view.standing.is_some() && !view.is_behind {
                return Ok(view);
            }
            tokio::time::sleep(LOOK).await;
        }
    }
}

/// A page that needs nothing beside it.
fn alone(view: &View, title: &str, body: &Markup) -> Markup {
    let page = html! {
        (DOCTYPE)
        html lang=(view.settings.language.tag()) {
            head {
                meta charset="utf-8";
                meta name="viewport" content="width=device-width, initial-scale=1";
                title { (title) " · " (view.apiary.name) }
                style { (PreEscaped(assets::STYLE)) }
            }
            body {
                main {
                    @if view.apiary.invented { p class="small" { (view.tongue().say(&text::invented())) } }
                    (body)
                }
                footer { (age(view)) }
            }
        }
    };
    fit_for_a_phone(page)
}
