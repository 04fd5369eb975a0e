//! A club's export gives everything back.

use crate::house::{fill, handed, is_as_on_one_machine, model, open, plan, run, work, yard};
use snowhum_club::{Choice, Club, Fault, Role};
use snowhum_testkit::postgres::Database;
use std::time::Duration;

async fn export(club: &Club) -> String {
    let mut text = Vec::new();
    club.export(&mut text).await.unwrap();
    String::from_utf8(text).unwrap()
}

#[test]
fn an_export_read_into_an_empty_club_is_written_out_there_to_the_same_bytes() {
    let (here, there) = {
        let here = Database::shared();
        let there = here.beside();
        (here, there)
    };
    run(async {
        let club = open(&here).await;
        let keeper = fill(&club, 210).await;
        let mentor = club.member("Heath", "Mo \"the\" mentor", Some(Role::Mentor)).await.unwrap();
        club.share(keeper, "Yard 1", mentor).await.unwrap();
        let shared = Choice { is_counted: true, readers: vec![mentor] };
        club.choose(keeper, uuid::Uuid::from_u128(1), &shared).await.unwrap();
        let key = club.give_key(keeper).await.unwrap();
        plan(&club).await;
        work(&club, model(Duration::ZERO)).await;
        let mut yards: Vec<_> = (0..210).map(|number| yard(number, "well")).collect();
        yards[3] = yard(3, "poison");
        club.take_in(keeper, &handed(yards)).await.unwrap();
        club.plan_night(&crate::house::night(jiff::civil::date(2026, 1, 11), "how?")).await.unwrap();
        work(&club, model(Duration::ZERO)).await;
        let text = export(&club).await;

        let other = open(&there).await;
        other.import(text.as_bytes()).await.unwrap();
        assert!(export(&other).await == text, "to the byte");
        is_as_on_one_machine(&other, 210, "how?").await;
        assert_eq!(other.sharing(keeper).await.unwrap(), club.sharing(keeper).await.unwrap());
        assert_eq!(other.counted_winters(keeper).await.unwrap().len(), 1);
        assert!(other.sign_in(&key).await.unwrap().is_none(), "ways in stay behind");
        assert_eq!(other.last_export(keeper).await.unwrap(), club.last_export(keeper).await.unwrap());
        let next = other.plan_night(&crate::house::night(jiff::civil::date(2026, 1, 12), "how?")).await.unwrap();
        assert_eq!((next.asked, next.queued), (210, 1), "what is answered stays so; what failed is tried again");
        assert!(matches!(other.import(text.as_bytes()).await, Err(Fault::NotEmpty)));
    });
}

#[test]
fn an_export_that_is_cut_short_or_changed_is_refused_whole() {
    let (here, there) = {
        let here = Database::shared();
        let there = here.beside();
        (here, there)
    };
    run(async {
        let club = open(&here).await;
        fill(&club, 3).await;
        let text = export(&club).await;
        let other = open(&there).await;
        let empty = export(&other).await;
        let lines: Vec<&str> = text.lines().collect();
        let cut = |lines: &[&str]| lines.join("\n");
        let missing = cut(&[&lines[..5], &lines[6..]].concat());
        for (bad, why) in [
            (cut(&lines[..lines.len() - 1]), "no end"),
            (text[..text.len() / 2].to_owned(), "half a line"),
            (missing, "a row is missing"),
            (text.replacen("\"table\":\"yard\"", "\"table\":\"pg_class\"", 1), "a table of no club"),
            (text.replacen("snowhum.club", "another", 1), "another's export"),
            (text.replacen("\"form\":3", "\"form\":4", 1), "a newer form"),
            (format!("{text}{}", lines[3]), "more after its end"),
            (String::new(), "nothing"),
        ] {
            let wrong = other.import(bad.as_bytes()).await.unwrap_err();
            assert!(matches!(wrong, Fault::Unreadable { .. }), "{why}: {wrong}");
            assert!(export(&other).await == empty, "{why}: nothing of it was kept");
        }
        other.import(text.as_bytes()).await.unwrap();
    });
}

#[test]
fn a_member_gets_back_what_they_handed_in_to_the_byte() {
    let database = Database::shared();
    run(async {
        let club = open(&database).await;
        let keeper = fill(&club, 1).await;
        let mut second = handed(vec![yard(0, "well")]);
        second.export = "{\"schema\":\"x\",\n \"müll\": \"\u{1F41D}\"}\r\n\n".to_owned();
        let taken = club.take_in(keeper, &second).await.unwrap();
        assert_eq!((taken.changed, taken.unchanged), (0, 1), "another export, the same yard");
        assert_eq!(club.last_export(keeper).await.unwrap(), Some(second.export));
        assert!(matches!(club.known_member("Heath", "Nobody").await, Err(Fault::NoSuch { .. })));
    });
}
