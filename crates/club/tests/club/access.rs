//! A key lets its member in, and what the database keeps of it lets nobody in.

use crate::house::{figure, fill, open, run, sql};
use snowhum_club::Role;
use snowhum_testkit::postgres::Database;

#[test]
fn a_key_opens_for_its_member_however_it_is_typed_and_a_new_one_ends_what_the_old_one_opened() {
    let database = Database::shared();
    run(async {
        let club = open(&database).await;
        let anna = fill(&club, 1).await;
        let mo = club.member("Heath", "Mo", Some(Role::Mentor)).await.unwrap();
        let (key, other) = (club.give_key(anna).await.unwrap(), club.give_key(mo).await.unwrap());
        assert!(key != other && key.len() == 39, "{key}");
        let typed = format!("  {} ", key.to_uppercase().replace('-', " "));
        let token = club.sign_in(&typed).await.unwrap().unwrap();
        let member = club.signed_in(&token).await.unwrap().unwrap();
        assert_eq!((member.id, member.name.as_str(), member.club.as_str()), (anna, "Anna", "Heath"));
        assert!(!member.is_mentor && club.signed_in(&key).await.unwrap().is_none(), "a key is no session");
        let others = club.sign_in(&other).await.unwrap().unwrap();
        let newer = club.give_key(anna).await.unwrap();
        assert!(club.signed_in(&token).await.unwrap().is_none(), "ended");
        assert!(club.sign_in(&key).await.unwrap().is_none() && club.sign_in(&newer).await.unwrap().is_some());
        assert!(club.signed_in(&others).await.unwrap().unwrap().is_mentor, "another member's goes on");
        club.sign_out(&others).await.unwrap();
        assert!(club.signed_in(&others).await.unwrap().is_none());
    });
}

#[test]
fn neither_what_is_kept_nor_nothing_opens_and_a_session_ends_unused_or_old() {
    let database = Database::shared();
    run(async {
        let club = open(&database).await;
        let anna = fill(&club, 1).await;
        let key = club.give_key(anna).await.unwrap();
        let token = club.sign_in(&key).await.unwrap().unwrap();
        let kept: Vec<String> = sqlx::query_scalar(
            "SELECT encode(hash, 'hex') FROM club.key UNION SELECT encode(hash, 'hex') FROM club.session",
        )
        .fetch_all(&mut sql(&database).await)
        .await
        .unwrap();
        for planted in kept.iter().map(String::as_str).chain(["", "-", "' OR true --", "\0"]) {
            assert!(club.sign_in(planted).await.unwrap().is_none() && club.signed_in(planted).await.unwrap().is_none());
        }
        for (column, days) in [("used_at", 31), ("begun_at", 181)] {
            assert!(club.signed_in(&token).await.unwrap().is_some());
            let age = format!("UPDATE club.session SET {column} = now() - INTERVAL '{days} days'");
            sqlx::query(sqlx::AssertSqlSafe(age)).execute(&mut sql(&database).await).await.unwrap();
            assert!(club.signed_in(&token).await.unwrap().is_none(), "{column}");
            let anew = format!("UPDATE club.session SET {column} = now()");
            sqlx::query(sqlx::AssertSqlSafe(anew)).execute(&mut sql(&database).await).await.unwrap();
        }
        sqlx::query("UPDATE club.session SET begun_at = now() - INTERVAL '181 days'")
            .execute(&mut sql(&database).await)
            .await
            .unwrap();
        let another = club.sign_in(&key).await.unwrap().unwrap();
        assert_eq!(figure(&database, "SELECT COUNT(*) FROM club.session").await, 1, "what has ended is swept out");
        assert!(club.signed_in(&another).await.unwrap().is_some());
    });
}
