//! Losses are shown as sums, of enough yards, and of those alone whose keepers chose it.

use crate::house::{House, failing, run};
use snowhum_club::{Cell, Choice, Role, Winter, Yard};
use snowhum_web::Reach;
use uuid::Uuid;

/// A yard in a cell that lost so many of ten.
fn lost(number: u128, cell: Cell, lost: u32) -> Yard {
    let winters = vec![Winter { year: 2025, colonies: 10, lost }];
    Yard { cell: Some(cell), winters, ..failing(number, &format!("Yard {number}"), "") }
}

#[test]
fn sums_are_shown_from_enough_yards_on_and_never_a_yard_by_itself() {
    run(async {
        let house = House::open(Reach::this_machine()).await;
        let (here, there) = (Cell { north: 60, east: 12 }, Cell { north: -38, east: -30 });
        let mut cookies = Vec::new();
        for number in 0..11_u128 {
            let cell = if number < 6 { here } else { there };
            let yard = lost(number, cell, u32::from(number % 3 == 0) * 4);
            let (member, cookie) = house.member(&format!("Keeper {number}"), Role::Keeper, vec![yard]).await;
            cookies.push((member, cookie));
        }
        let read = async || house.get("/losses", &cookies[0].1).await.body;
        let count = async |number: usize, is_counted: bool| {
            let choice = Choice { is_counted, readers: vec![] };
            house.club.choose(cookies[number].0, Uuid::from_u128(number as u128), &choice).await.unwrap();
        };
        assert!(read().await.contains("No winter is counted yet"));
        for number in 0..4 {
            count(number, true).await;
        }
        let page = read().await;
        assert!(page.contains("Fewer than 5 yards of 3 members") && !page.contains('%'), "{page}");
        for number in 4..11 {
            count(number, true).await;
        }
        let page = read().await;
        assert!(page.contains("16 of 110 colonies of 11 members lost: <strong>14.5 %</strong>"), "{page}");
        assert!(page.contains("Winter 2025–26") && page.contains("60–61° N, 24–26° E"), "{page}");
        assert!(page.contains("37–38° S, 58–60° W") && page.contains("8 of 60") && page.contains("8 of 50"), "{page}");
        assert!(!page.contains("Keeper 3") && !page.contains("Yard 3"), "{page}");
        count(10, false).await;
        let page = read().await;
        assert!(page.contains("16 of 100 colonies of 10 members") && !page.contains("8 of 40"), "{page}");
        assert!(!page.contains("60–61°"), "what is left would tell of the other cell: {page}");
    });
}
