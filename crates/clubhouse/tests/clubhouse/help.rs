//! Who needs help this week: of the last complete night, of the yards one may see, and never calmer than is known.

use crate::house::{DAY, House, failing, run, yard};
use axum::http::StatusCode;
use jiff::civil::date;
use snowhum_advice::verdict::Urgency;
use snowhum_club::{Choice, Role};
use snowhum_web::Reach;
use uuid::Uuid;

#[test]
fn no_member_sees_anothers_yard_unless_it_is_shared() {
    run(async {
        let house = House::open(Reach::this_machine()).await;
        let (anna, as_anna) =
            house.member("Anna", Role::Keeper, vec![yard(1, "Rowan Bank", DAY, &[("Alder", Urgency::Today)])]).await;
        let (_, as_bo) =
            house.member("Bo", Role::Keeper, vec![yard(2, "Bo's", DAY, &[("Birch", Urgency::LeaveAlone)])]).await;
        let (mo, as_mo) = house.member("Mo", Role::Mentor, vec![]).await;
        house.night(DAY).await;
        let first = Uuid::from_u128(1);
        let sees = async |cookie: &str| {
            let pages = ["/", &format!("/yard/{first}"), "/sharing", "/losses", "/night"];
            let mut seen = Vec::new();
            for page in pages {
                let answered = house.get(page, cookie).await;
                seen.push(answered.body.contains("Rowan Bank") || answered.body.contains("Alder"));
                assert!(answered.status == StatusCode::OK || page.contains(&first.to_string()), "{page}");
            }
            seen
        };
        assert_eq!(sees(&as_anna).await, [true, true, true, false, false]);
        assert_eq!(sees(&as_bo).await, [false; 5]);
        assert_eq!(sees(&as_mo).await, [false; 5]);
        assert_eq!(house.get(&format!("/yard/{first}"), &as_bo).await.status, StatusCode::NOT_FOUND);
        house.club.choose(anna, first, &Choice { is_counted: false, readers: vec![mo] }).await.unwrap();
        assert_eq!(sees(&as_mo).await, [true, true, false, false, false]);
        assert_eq!(sees(&as_bo).await, [false; 5]);
        house.club.choose(anna, first, &Choice::default()).await.unwrap();
        assert_eq!(sees(&as_mo).await, [false; 5], "taken back");
    });
}

#[test]
fn the_most_urgent_yard_stands_first_and_what_is_not_known_is_not_called_calm() {
    run(async {
        let house = House::open(Reach::this_machine()).await;
        let yards = vec![
            yard(1, "A calm one", DAY, &[("Alder", Urgency::LeaveAlone)]),
            yard(2, "Of October", date(2025, 10, 5), &[("Birch", Urgency::LeaveAlone)]),
            yard(3, "In need", DAY, &[("Cedar", Urgency::LeaveAlone), ("Hazel <b>", Urgency::Today)]),
            failing(4, "Without a count", "its count is missing"),
            yard(5, "To be looked at", DAY, &[("Elder", Urgency::LookInside)]),
            yard(6, "Empty", DAY, &[]),
        ];
        let (_, anna) = house.member("Anna", Role::Keeper, yards).await;
        assert!(house.get("/", &anna).await.body.contains("No night is complete yet"));
        house.night(DAY).await;
        let page = house.get("/", &anna).await.body;
        let at = |words: &str| page.find(words).unwrap_or_else(|| panic!("{words}: {page}"));
        let order = [
            "<strong>1</strong> of 6 yards needs somebody within a week. Of 3 yards nothing is known",
            "First: 1",
            "In need",
            "Hazel &lt;b&gt;",
            "Clear the openings",
            "Then: 1",
            "To be looked at",
            "Not known for this week: 3",
            "Empty",
            "Of October",
            "Answered for 5 October 2025",
            "Without a count",
            "its count is missing",
            "To be left alone, or gone: 1",
            "A calm one",
        ];
        let places: Vec<usize> = order.iter().map(|words| at(words)).collect();
        assert!(places.is_sorted(), "{places:?}\n{page}");
        assert!(!page.contains("Cedar"), "what needs nobody is not told among what does");
        let one = house.get(&format!("/yard/{}", Uuid::from_u128(3)), &anna).await.body;
        assert!(
            one.contains("Cedar") && one.contains("Nothing is due.") && one.contains("40 of 100 now, 90 if"),
            "{one}"
        );
    });
}

#[test]
fn a_club_of_which_nothing_is_known_is_never_told_that_nobody_is_needed() {
    run(async {
        let house = House::open(Reach::this_machine()).await;
        let yards = vec![yard(1, "Of October", date(2025, 10, 5), &[("Birch", Urgency::LeaveAlone)])];
        let (_, anna) = house.member("Anna", Role::Keeper, yards).await;
        house.night(DAY).await;
        let page = house.get("/", &anna).await.body;
        assert!(page.contains("Of one yard nothing is known") && !page.contains("needs nobody"), "{page}");
        assert!(page.contains("days ago"), "a night of long ago is called old");
    });
}

#[test]
fn the_next_night_is_not_read_before_it_is_complete() {
    run(async {
        let house = House::open(Reach::this_machine()).await;
        let (_, anna) =
            house.member("Anna", Role::Keeper, vec![yard(1, "Bank", DAY, &[("Alder", Urgency::Today)])]).await;
        house.night(DAY).await;
        house.plan(date(2026, 1, 11)).await;
        let page = house.get("/", &anna).await.body;
        assert!(page.contains("the night of 10 January 2026") && page.contains("Alder"), "{page}");
    });
}

#[test]
fn a_page_is_in_the_trades_words_of_who_reads_it_and_names_stay() {
    run(async {
        let house = House::open(Reach::this_machine()).await;
        let mut handed = yard(1, "Bank", DAY, &[("Crownboard", Urgency::ThisWeek)]);
        handed.body = handed.body.replace("clear-openings", "insulate-lid");
        let (_, anna) = house.member("Anna", Role::Keeper, vec![handed]).await;
        house.night(DAY).await;
        let british = house.get("/", &anna).await.body;
        assert!(british.contains("over the crownboard"), "{british}");
        let american = house.get("/", &format!("{anna}; snowhum-club-language=en-US")).await.body;
        assert!(
            american.contains("over the inner cover") && american.contains("<strong>Crownboard</strong>"),
            "{american}"
        );
    });
}
