//! A member chooses on a page what is shared, and nobody chooses for another.

use crate::house::{DAY, House, run, yard};
use axum::http::StatusCode;
use snowhum_advice::verdict::Urgency;
use snowhum_club::Role;
use snowhum_web::Reach;
use uuid::Uuid;

#[test]
fn what_is_ticked_is_shared_and_what_is_not_is_shared_no_more() {
    run(async {
        let house = House::open(Reach::this_machine()).await;
        let (anna, as_anna) =
            house.member("Anna", Role::Keeper, vec![yard(1, "Bank", DAY, &[("Alder", Urgency::Today)])]).await;
        let (mo, as_mo) = house.member("Mo", Role::Mentor, vec![]).await;
        house.night(DAY).await;
        let first = Uuid::from_u128(1);
        let to = format!("/sharing/{first}");
        let page = house.get("/sharing", &as_anna).await.body;
        assert!(page.contains("Mo") && page.contains(&to) && !page.contains("checked"), "{page}");
        let kept = house.post(&to, &as_anna, &format!("reader={mo}&counted=yes")).await;
        assert_eq!(kept.to, format!("/sharing#yard-{first}"));
        assert_eq!(house.get("/sharing", &as_anna).await.body.matches("checked").count(), 2);
        assert!(house.get("/", &as_mo).await.body.contains("Bank"));
        house.post(&to, &as_anna, "").await;
        assert!(!house.get("/", &as_mo).await.body.contains("Bank"));
        assert!(!house.club.sharing(anna).await.unwrap().yards[0].is_counted);
    });
}

#[test]
fn nobody_shares_a_yard_that_is_not_theirs_nor_with_who_is_no_mentor() {
    run(async {
        let house = House::open(Reach::this_machine()).await;
        let (anna, as_anna) = house.member("Anna", Role::Keeper, vec![yard(1, "Bank", DAY, &[])]).await;
        let (bo, as_bo) = house.member("Bo", Role::Keeper, vec![]).await;
        let (mo, as_mo) = house.member("Mo", Role::Mentor, vec![]).await;
        let to = format!("/sharing/{}", Uuid::from_u128(1));
        for (cookie, form, why) in [
            (&as_bo, format!("reader={mo}"), "Bo's it is not"),
            (&as_mo, format!("reader={mo}"), "a mentor helps themselves to nothing"),
            (&as_anna, format!("reader={bo}&counted=yes"), "no mentor"),
            (&as_anna, "reader=everybody".to_owned(), "nobody's id"),
        ] {
            let refused = house.post(&to, cookie, &form).await;
            assert_eq!(refused.status, StatusCode::NOT_FOUND, "{why}");
            let own = &house.club.sharing(anna).await.unwrap().yards[0];
            assert!(own.readers.is_empty() && !own.is_counted, "{why}: nothing was done");
        }
    });
}
