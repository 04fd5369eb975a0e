//! Nobody sees another's yard unless it was shared: asked of PostgreSQL itself, past all code of ours.

use crate::house::{fill, handed, model, open, plan, run, sql, work, yard};
use snowhum_club::{Choice, Club, CountedWinter, Fault, Role};
use snowhum_testkit::postgres::Database;
use sqlx::AssertSqlSafe;
use std::time::Duration;
use uuid::Uuid;

/// Two keepers with a yard each, two mentors, of which one is of another club.
struct People {
    anna: Uuid,
    bo: Uuid,
    mentor: Uuid,
    stranger: Uuid,
}

async fn people(database: &Database, club: &Club) -> People {
    let anna = fill(club, 2).await;
    let bo = club.member("Heath", "Bo", None).await.unwrap();
    club.take_in(bo, &handed(vec![yard(100, "well")])).await.unwrap();
    let mentor = club.member("Heath", "Mo", Some(Role::Mentor)).await.unwrap();
    let stranger = club.member("Moor", "Sten", Some(Role::Mentor)).await.unwrap();
    plan(club).await;
    work(club, model(Duration::ZERO)).await;
    // A failure each, so that these are looked for too.
    let failures = "INSERT INTO club.failure SELECT night, yard, 'words', 1 FROM club.asked";
    sqlx::query(failures).execute(&mut sql(database).await).await.unwrap();
    let counted = "INSERT INTO club.counted SELECT id FROM club.yard";
    sqlx::query(counted).execute(&mut sql(database).await).await.unwrap();
    People { anna, bo, mentor, stranger }
}

/// The yards that a member sees, in any table that has them.
async fn yards_seen(database: &Database, member: Uuid) -> Vec<Uuid> {
    let club = open(database).await;
    let mut seen = Vec::new();
    for (table, column) in yards_columns(database).await {
        let mut reading = club.as_member(member).await.unwrap();
        let rows = format!("SELECT {column} FROM club.{table}");
        let rows: Vec<Uuid> = sqlx::query_scalar(AssertSqlSafe(rows)).fetch_all(&mut *reading).await.unwrap();
        seen.push((table, rows));
    }
    let (_, first) = seen.iter().find(|(table, _)| table == "yard").unwrap();
    let mut first = first.clone();
    first.sort();
    for (table, rows) in seen.iter().filter(|(table, _)| table != "share") {
        let mut rows = rows.clone();
        rows.sort();
        rows.dedup();
        assert_eq!(rows, first, "{table} shows other yards than the yards");
    }
    first
}

/// Each table with a yard in it, so that a new one is not forgotten.
async fn yards_columns(database: &Database) -> Vec<(String, String)> {
    let columns = "SELECT table_name::TEXT, CASE table_name WHEN 'yard' THEN 'id' ELSE 'yard' END FROM information_schema.columns \
                   WHERE table_schema = 'club' AND (column_name = 'yard' OR (table_name, column_name) = ('yard', 'id'))";
    let found: Vec<(String, String)> = sqlx::query_as(columns).fetch_all(&mut sql(database).await).await.unwrap();
    assert_eq!(found.len(), 8, "{found:?}");
    found
}

#[test]
fn a_member_sees_their_own_yards_and_no_other_in_any_table() {
    let database = Database::shared();
    run(async {
        let club = open(&database).await;
        let people = people(&database, &club).await;
        let ids = |numbers: &[u128]| numbers.iter().map(|number| Uuid::from_u128(*number)).collect::<Vec<_>>();
        assert_eq!(yards_seen(&database, people.anna).await, ids(&[0, 1]));
        assert_eq!(yards_seen(&database, people.bo).await, ids(&[100]));
        assert_eq!(yards_seen(&database, people.mentor).await, ids(&[]), "nothing was shared");
        club.share(people.anna, "Yard 1", people.mentor).await.unwrap();
        assert_eq!(yards_seen(&database, people.mentor).await, ids(&[1]));
        assert_eq!(yards_seen(&database, people.bo).await, ids(&[100]));
        let night = club.last_night(Some(people.mentor)).await.unwrap().unwrap();
        assert_eq!(night.yards.iter().map(|one| one.yard).collect::<Vec<_>>(), ids(&[1]));
        club.member("Heath", "Mo", Some(Role::Keeper)).await.unwrap();
        assert_eq!(yards_seen(&database, people.mentor).await, ids(&[]), "a mentor no more");
        club.member("Heath", "Mo", Some(Role::Mentor)).await.unwrap();
        club.unshare(people.anna, "Yard 1", people.mentor).await.unwrap();
        assert_eq!(yards_seen(&database, people.mentor).await, ids(&[]));
        assert_eq!(yards_seen(&database, Uuid::from_u128(77)).await, ids(&[]), "nobody sees nothing");
    });
}

#[test]
fn what_was_handed_in_is_its_owners_alone_also_when_a_yard_of_it_is_shared() {
    let database = Database::shared();
    run(async {
        let club = open(&database).await;
        let people = people(&database, &club).await;
        club.share(people.anna, "Yard 1", people.mentor).await.unwrap();
        for (who, sees) in [(people.anna, 1), (people.bo, 1), (people.mentor, 0), (people.stranger, 0)] {
            let mut reading = club.as_member(who).await.unwrap();
            let seen: i64 =
                sqlx::query_scalar("SELECT COUNT(*) FROM club.export").fetch_one(&mut *reading).await.unwrap();
            assert_eq!(seen, sees);
        }
    });
}

#[test]
fn only_the_owner_shares_a_yard_and_only_with_a_mentor_of_the_club() {
    let database = Database::shared();
    run(async {
        let club = open(&database).await;
        let people = people(&database, &club).await;
        let share = async |who: Uuid, yard: u128, with: Uuid| {
            let mut writing = club.as_member(who).await.unwrap();
            let row = sqlx::query("INSERT INTO club.share (yard, mentor) VALUES ($1, $2)").bind(Uuid::from_u128(yard));
            row.bind(with).execute(&mut *writing).await.is_ok()
        };
        assert!(share(people.anna, 1, people.mentor).await);
        assert!(!share(people.bo, 1, people.mentor).await, "not Bo's");
        assert!(!share(people.mentor, 1, people.mentor).await, "a mentor helps themselves to nothing");
        assert!(!share(people.anna, 1, people.bo).await, "no mentor");
        assert!(!share(people.anna, 1, people.stranger).await, "of another club");
        assert!(matches!(
            club.share(people.bo, "Yard 1", people.mentor).await,
            Err(Fault::NoSuch { what: "yard", .. })
        ));
        assert!(matches!(
            club.share(people.anna, "Yard 1", people.bo).await,
            Err(Fault::NoSuch { what: "mentor", name, .. }) if name == "Bo"
        ));
    });
}

#[test]
fn a_member_changes_nothing_but_whom_their_yards_are_shared_with() {
    let database = Database::shared();
    run(async {
        let club = open(&database).await;
        let people = people(&database, &club).await;
        let tables = "SELECT relname::TEXT, relrowsecurity FROM pg_class WHERE relnamespace = 'club'::regnamespace AND relkind = 'r'";
        let tables: Vec<(String, bool)> = sqlx::query_as(tables).fetch_all(&mut sql(&database).await).await.unwrap();
        assert_eq!(tables.len(), 15);
        sqlx::query("DELETE FROM club.counted").execute(&mut sql(&database).await).await.unwrap();
        for (table, is_guarded) in tables {
            assert!(is_guarded, "{table} has no policy");
            for (what, shares) in [
                ("DELETE FROM club.{}", true),
                ("UPDATE club.{} SET ctid = ctid", false),
                ("INSERT INTO club.{} SELECT * FROM club.{}", true),
            ] {
                let mut writing = club.as_member(people.anna).await.unwrap();
                let done = sqlx::query(AssertSqlSafe(what.replace("{}", &table))).execute(&mut *writing).await;
                let may = ["share", "counted"].contains(&table.as_str()) && shares;
                assert_eq!(done.is_ok(), may, "{what} of {table}: {done:?}");
            }
        }
        for table in ["graphile_worker.jobs", "club.key", "club.session"] {
            let mut reading = club.as_member(people.anna).await.unwrap();
            let rows = sqlx::query(AssertSqlSafe(format!("SELECT FROM {table}"))).execute(&mut *reading).await;
            assert!(rows.is_err(), "{table} is no member's");
        }
    });
}

#[test]
fn a_yard_of_another_member_is_not_taken_over() {
    let database = Database::shared();
    run(async {
        let club = open(&database).await;
        let people = people(&database, &club).await;
        let both = handed(vec![yard(100, "changed"), yard(1, "mine now")]);
        assert!(matches!(club.take_in(people.bo, &both).await, Err(Fault::NotTheirs { .. })));
        assert_eq!(yards_seen(&database, people.anna).await.len(), 2);
        let last = club.last_export(people.bo).await.unwrap().unwrap();
        assert_eq!(last, "yard 100: well\n", "all of it or nothing");
    });
}

#[test]
fn a_member_chooses_who_reads_a_yard_and_whether_it_is_counted_and_nobody_chooses_for_another() {
    let database = Database::shared();
    run(async {
        let club = open(&database).await;
        let people = people(&database, &club).await;
        let first = Uuid::from_u128(1);
        let choice = |is_counted, readers: &[Uuid]| Choice { is_counted, readers: readers.to_vec() };
        club.choose(people.anna, first, &choice(false, &[people.mentor])).await.unwrap();
        assert_eq!(yards_of(&club, people.mentor).await, [first]);
        let told = club.sharing(people.anna).await.unwrap();
        let chosen: Vec<_> = told.yards.iter().map(|yard| (yard.is_counted, yard.readers.clone())).collect();
        assert_eq!(chosen, [(true, vec![]), (false, vec![people.mentor])]);
        assert_eq!(told.mentors, [(people.mentor, "Mo".to_owned())], "those of another club are not named");
        for (who, yard, readers, why) in [
            (people.bo, first, vec![], "not Bo's"),
            (people.mentor, first, vec![people.mentor], "read, not owned"),
            (people.anna, first, vec![people.bo], "no mentor"),
            (people.anna, first, vec![people.stranger], "of another club"),
            (people.anna, Uuid::from_u128(100), vec![people.mentor], "not Anna's"),
        ] {
            let refused = club.choose(who, yard, &choice(true, &readers)).await;
            assert!(matches!(refused, Err(Fault::NoSuch { .. })), "{why}");
            assert_eq!(club.sharing(people.anna).await.unwrap(), told, "{why}: nothing was done");
        }
        club.choose(people.anna, first, &Choice::default()).await.unwrap();
        assert_eq!(yards_of(&club, people.mentor).await, [] as [Uuid; 0]);
    });
}

/// The yards that the pages show a member.
async fn yards_of(club: &Club, member: Uuid) -> Vec<Uuid> {
    club.last_night(Some(member)).await.unwrap().unwrap().yards.iter().map(|one| one.yard).collect()
}

#[test]
fn what_is_counted_is_what_its_owner_lets_the_club_count_and_of_the_own_club_alone() {
    let database = Database::shared();
    run(async {
        let club = open(&database).await;
        let people = people(&database, &club).await;
        let elsewhere = club.member("Moor", "Ulla", None).await.unwrap();
        club.take_in(elsewhere, &handed(vec![yard(200, "well")])).await.unwrap();
        let all = Choice { is_counted: true, readers: vec![] };
        club.choose(elsewhere, Uuid::from_u128(200), &all).await.unwrap();
        club.choose(people.anna, Uuid::from_u128(1), &Choice::default()).await.unwrap();
        let lost = |winters: Vec<CountedWinter>| winters.iter().map(|one| (one.owner, one.lost)).collect::<Vec<_>>();
        let here = club.counted_winters(people.mentor).await.unwrap();
        assert_eq!(lost(here), [(people.anna, 0), (people.bo, 0)]);
        assert_eq!(lost(club.counted_winters(people.stranger).await.unwrap()), [(elsewhere, 0)]);
        assert_eq!(club.counted_winters(Uuid::from_u128(77)).await.unwrap(), []);
    });
}
