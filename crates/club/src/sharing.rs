//! What a member lets others see, and the club count.

use crate::database::{Club, Transaction};
use crate::fault::Fault;
use crate::yards::is_denied;
use uuid::Uuid;

/// A member's own yards with what is chosen for each, and whom they can be shared with.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Sharing {
    /// Their yards, by name.
    pub yards: Vec<OwnYard>,
    /// Mentors of their club, by name; they themselves are not among them.
    pub mentors: Vec<(Uuid, String)>,
}

/// One yard of them.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct OwnYard {
    /// Which.
    pub id: Uuid,
    /// Its name.
    pub name: String,
    /// Whether the club may count its winters.
    pub is_counted: bool,
    /// Who reads it.
    pub readers: Vec<Uuid>,
}

/// What a member chooses for a yard.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Choice {
    /// Whether the club may count its winters.
    pub is_counted: bool,
    /// Who reads it, and nobody else.
    pub readers: Vec<Uuid>,
}

/// One winter of a counted yard, as the club's sums are made of it: no member is shown one.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct CountedWinter {
    /// Whose.
    pub owner: Uuid,
    /// Where, as far as anybody is told; none where that is not known.
    pub cell: Option<Cell>,
    /// The year of its autumn.
    pub year: i16,
    /// Colonies at risk.
    pub colonies: u32,
    /// Of them lost.
    pub lost: u32,
}

/// A coarse cell of the map, counted from the equator and from Greenwich.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Cell {
    /// Northwards; below the equator below none.
    pub north: i32,
    /// Eastwards; west of Greenwich below none.
    pub east: i32,
}

type Row = (Uuid, Option<i32>, Option<i32>, i32, i64, i64);

impl Club {
    /// What a member shares.
    ///
    /// # Errors
    /// When the database cannot be read.
    pub async fn sharing(&self, member: Uuid) -> Result<Sharing, Fault> {
        let mut reading = self.as_member(member).await?;
        let rows = "SELECT id, name, EXISTS (SELECT FROM club.counted WHERE yard = yard.id), \
                    ARRAY(SELECT mentor FROM club.share WHERE yard = yard.id) \
                    FROM club.yard WHERE owner = $1 AND left_at IS NULL ORDER BY name, id";
        let rows: Vec<(Uuid, String, bool, Vec<Uuid>)> =
            sqlx::query_as(rows).bind(member).fetch_all(&mut *reading).await?;
        let yards = rows.into_iter().map(|(id, name, is_counted, readers)| OwnYard { id, name, is_counted, readers });
        let mentors = "SELECT id, name FROM club.member WHERE role = 'mentor' AND id <> $1 ORDER BY name, id";
        let mentors = sqlx::query_as(mentors).bind(member).fetch_all(&mut *reading).await?;
        Ok(Sharing { yards: yards.collect(), mentors })
    }

    /// Lets others see a yard, and the club count it, as its owner chooses; said by them, as whom the database is asked.
    ///
    /// # Errors
    /// When the yard is not theirs, or a reader no mentor of the same club; then nothing of it is done.
    pub async fn choose(&self, owner: Uuid, yard: Uuid, choice: &Choice) -> Result<(), Fault> {
        let mut writing = self.as_member(owner).await?;
        let own = sqlx::query("SELECT FROM club.yard WHERE id = $1 AND owner = $2").bind(yard).bind(owner);
        if own.fetch_optional(&mut *writing).await?.is_none() {
            return Err(Fault::NoSuch { what: "yard", name: yard.to_string() });
        }
        match chosen(&mut writing, yard, choice).await {
            Err(error) if is_denied(&error) => {
                let name = format!("{:?}", choice.readers);
                Err(Fault::NoSuch { what: "mentor", name })
            }
            done => {
                done?;
                Ok(writing.commit().await?)
            }
        }
    }

    /// Winters that may be counted in a member's club. For sums alone: who shows them shows no yard by itself.
    ///
    /// # Errors
    /// When the database cannot be read.
    pub async fn counted_winters(&self, member: Uuid) -> Result<Vec<CountedWinter>, Fault> {
        let rows = "SELECT owner.id, yard.cell_north, yard.cell_east, winter.year, winter.colonies, winter.lost \
                    FROM club.counted JOIN club.yard ON yard.id = counted.yard JOIN club.winter ON winter.yard = yard.id \
                    JOIN club.member AS owner ON owner.id = yard.owner \
                    WHERE owner.club = (SELECT club FROM club.member WHERE id = $1) ORDER BY winter.year, yard.id";
        let rows: Vec<Row> = sqlx::query_as(rows).bind(member).fetch_all(self.pool()).await?;
        rows.into_iter().map(read).collect()
    }
}

async fn chosen(writing: &mut Transaction, yard: Uuid, choice: &Choice) -> Result<(), sqlx::Error> {
    sqlx::query("DELETE FROM club.share WHERE yard = $1").bind(yard).execute(&mut **writing).await?;
    let shares =
        "INSERT INTO club.share (yard, mentor) SELECT $1, mentor FROM unnest($2) AS mentor ON CONFLICT DO NOTHING";
    sqlx::query(shares).bind(yard).bind(&choice.readers).execute(&mut **writing).await?;
    let counted = match choice.is_counted {
        true => "INSERT INTO club.counted (yard) VALUES ($1) ON CONFLICT DO NOTHING",
        false => "DELETE FROM club.counted WHERE yard = $1",
    };
    sqlx::query(counted).bind(yard).execute(&mut **writing).await?;
    Ok(())
}

fn read((owner, north, east, year, colonies, lost): Row) -> Result<CountedWinter, Fault> {
    let damaged = || Fault::Damaged { what: format!("a winter of {year} with {lost} of {colonies} lost") };
    Ok(CountedWinter {
        owner,
        cell: north.zip(east).map(|(north, east)| Cell { north, east }),
        year: i16::try_from(year).map_err(|_| damaged())?,
        colonies: u32::try_from(colonies).map_err(|_| damaged())?,
        lost: u32::try_from(lost).map_err(|_| damaged())?,
    })
}
