//! Notes of a spreadsheet: shown first, asked about, kept in one step and taken back in one.

use axum::body::Body;
use axum::http::{Request, StatusCode};
use snowhum_testkit::workbooks::{rows, workbook};

use crate::support::{Answer, Served, run, said, well_formed};

const LINES: &str = "Datum;Volk;Gewicht;Notiz\n25.1.2026;Alder;42,5;ruhig\n26.1.2026;Birch;38;<b>laut</b>\n";
const COLUMNS: &str = "date=Datum, hive=Volk, scale=Gewicht:kg, words=Notiz";

impl Served {
    /// Sends a form with a file in it, as a browser does without scripts.
    async fn send(&self, parts: &[(&str, &[u8])]) -> Answer {
        let mut body = Vec::new();
        for (name, value) in parts {
            let file = if *name == "file" { "; filename=\"diary.xlsx\"" } else { "" };
            body.extend(format!("--edge\r\nContent-Disposition: form-data; name=\"{name}\"{file}\r\n\r\n").bytes());
            body.extend(*value);
            body.extend(b"\r\n");
        }
        body.extend(b"--edge--\r\n");
        let request = Request::post("/import")
            .header("host", "127.0.0.1:8462")
            .header("origin", "http://127.0.0.1:8462")
            .header("content-type", "multipart/form-data; boundary=edge");
        self.ask(request.body(Body::from(body)).unwrap()).await
    }

    async fn program(&self, way: &str, sheet: &[u8]) -> (StatusCode, serde_json::Value) {
        let request = Request::post(format!("/api/notes/sheet{way}")).body(Body::from(sheet.to_vec())).unwrap();
        let answer = self.ask(request).await;
        (answer.status, serde_json::from_str(&answer.body).unwrap())
    }

    async fn notes(&self) -> usize {
        self.store.yard(self.yard.id).await.unwrap().unwrap().notes.len()
    }
}

#[test]
fn a_sheet_is_shown_first_kept_by_one_tap_and_taken_back_by_one() {
    run(|served| async move {
        let before = served.notes().await;
        let form = served.get("/import").await;
        assert!(form.body.contains("multipart/form-data"));
        well_formed(&form.body).unwrap();
        let preview = served.send(&[("text", LINES.as_bytes()), ("columns", COLUMNS.as_bytes())]).await;
        assert_eq!(preview.status, StatusCode::OK, "{}", preview.body);
        well_formed(&preview.body).unwrap();
        assert!(preview.body.contains("scale=42.5 kg; words=ruhig") && preview.body.contains("&lt;b&gt;laut"));
        assert_eq!(served.notes().await, before, "nothing is kept yet");
        let text = preview.body.split("<textarea hidden").nth(1).unwrap();
        let text = text.split_once(">\n").unwrap().1.split_once("</textarea>").unwrap().0;
        let text = text.replace("&lt;", "<").replace("&gt;", ">");
        let kept = [("text", text.as_bytes()), ("columns", COLUMNS.as_bytes()), ("keep", b"yes")];
        let kept = served.send(&kept).await;
        assert_eq!(
            (kept.status, &kept.headers["location"]),
            (StatusCode::SEE_OTHER, &"/import?kept=2".parse().unwrap())
        );
        assert_eq!(served.notes().await, before + 2);
        assert!(served.get("/import?kept=2").await.body.contains("Take them back"));
        let back = served.post("/import/undo", &[]).await;
        assert_eq!(back.headers["location"], "/import?back=2");
        assert_eq!(served.notes().await, before);
    });
}

#[test]
fn what_its_columns_are_is_said_once() {
    run(|served| async move {
        let refused = served.send(&[("text", LINES.as_bytes())]).await;
        assert_eq!(refused.status, StatusCode::UNPROCESSABLE_ENTITY);
        assert!(
            refused.body.contains("value=\"date=Datum, hive=Volk\""),
            "the mend stands in the form: {}",
            refused.body
        );
        well_formed(&refused.body).unwrap();
        served.send(&[("text", LINES.as_bytes()), ("columns", COLUMNS.as_bytes()), ("keep", b"yes")]).await;
        let next = "Datum;Volk;Gewicht;Notiz\n27.1.2026;Alder;42;\n";
        let read = served.send(&[("text", next.as_bytes())]).await;
        assert!(read.body.contains("scale=42 kg"), "{}", said(&read.body));
    });
}

#[test]
fn rows_that_are_asked_about_are_kept_only_when_it_is_said() {
    run(|served| async move {
        let before = served.notes().await;
        let sheet =
            rows(&["Date | Hive | Note", "@46047 | Alder | quiet", "@46047 | Alder | quiet", "@45000 | Larch | x"]);
        let book = workbook(&[("2026", &sheet)]);
        let asked = served.send(&[("file", &book), ("keep", b"yes")]).await;
        assert_eq!(asked.status, StatusCode::OK);
        let text = said(&asked.body);
        assert!(text.contains("Is that right?"), "{text}");
        assert!(
            asked.body.contains("the same stands noted") && asked.body.contains("before the colonies were counted")
        );
        assert_eq!(served.notes().await, before);
        let some = served.send(&[("file", &book), ("keep", b"unasked")]).await;
        assert_eq!(some.headers["location"], "/import?kept=1");
        let all = served.send(&[("file", &book), ("keep", b"all")]).await;
        assert_eq!(all.headers["location"], "/import?kept=2", "the first is kept once");
        let ahead = rows(&["Date | Hive | Note", "@46500 | Alder | quiet"]);
        let ahead = served.send(&[("file", &workbook(&[("x", &ahead)])), ("keep", b"all")]).await;
        assert!(ahead.body.contains("still to come") && !ahead.body.contains("value=\"all\""));
        assert_eq!(served.notes().await, before + 3);
    });
}

#[test]
fn a_program_reads_keeps_and_takes_back_a_sheet() {
    run(|served| async move {
        let before = served.notes().await;
        let (status, refused) = served.program("", LINES.as_bytes()).await;
        assert_eq!(status, StatusCode::UNPROCESSABLE_ENTITY);
        assert_eq!(refused["faults"]["columns"], "date=Datum, hive=Volk");
        let way = "?columns=date=Datum,hive=Volk,scale=Gewicht:kg".replace(['='], "%3D").replacen("%3D", "=", 1);
        let (status, read) = served.program(&way, LINES.as_bytes()).await;
        assert_eq!(
            (status, &read["read"]["rows"][0]["says"]),
            (StatusCode::OK, &"scale=42.5 kg; words=Notiz: ruhig".into())
        );
        assert_eq!(served.notes().await, before);
        let (status, kept) = served.program(&format!("{way}&keep=yes"), LINES.as_bytes()).await;
        assert_eq!((status, &kept["stored"]), (StatusCode::CREATED, &2.into()));
        let (status, _) = served.program("?keep=perhaps", LINES.as_bytes()).await;
        assert_eq!(status, StatusCode::UNPROCESSABLE_ENTITY);
        let undo = || Request::delete("/api/notes/sheet").body(Body::empty()).unwrap();
        assert!(served.ask(undo()).await.body.contains("\"withdrawn\":2"));
        assert_eq!(served.ask(undo()).await.status, StatusCode::NOT_FOUND);
        assert_eq!(served.notes().await, before);
    });
}

#[test]
fn a_sheet_may_be_larger_than_a_form_and_not_without_end() {
    run(|served| async move {
        let row = "25.1.2026;Alder;".to_owned() + &"x".repeat(600) + "\n";
        let (status, read) = served.program("", ("Date;Hive;Note\n".to_owned() + &row.repeat(400)).as_bytes()).await;
        assert_eq!((status, read["read"]["rows"].as_array().map(Vec::len)), (StatusCode::OK, Some(400)));
        let request = Request::post("/api/notes/sheet").body(Body::from(vec![b'x'; (4 << 20) + 1])).unwrap();
        assert_eq!(served.ask(request).await.status, StatusCode::PAYLOAD_TOO_LARGE);
        let swollen = served.send(&[("file", &workbook(&[("x", &" ".repeat(32 << 20))]))]).await;
        assert!(swollen.body.contains("unpacks to more than 16 MB"), "{}", swollen.body);
    });
}
