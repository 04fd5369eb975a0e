//! What a failure leaves behind: the page as seen, as written and as read aloud.

use anyhow::Result;
use serde_json::json;
use std::fmt::Write;
use std::path::PathBuf;

use crate::browser::Browser;
use crate::server::target;

/// Keeps screenshot, source and accessibility tree of the page, and says where.
pub(crate) async fn keep(name: &str, browser: &Browser<'_>) -> String {
    match kept(name, browser).await {
        Ok(folder) => format!("{name}; what the page looked like is in {}", folder.display()),
        Err(error) => format!("{name}; what the page looked like could not be kept ({error:#})"),
    }
}

async fn kept(name: &str, browser: &Browser<'_>) -> Result<PathBuf> {
    let folder = target().join("browser").join(name);
    std::fs::create_dir_all(&folder)?;
    browser.driver.screenshot(&folder.join("page.png")).await?;
    std::fs::write(folder.join("page.html"), browser.driver.source().await?)?;
    std::fs::write(folder.join("tree.txt"), tree(browser).await?)?;
    std::fs::write(folder.join("address.txt"), browser.driver.current_url().await?.as_str())?;
    Ok(folder.canonicalize()?)
}

/// Roles and names in the order they are read.
async fn tree(browser: &Browser<'_>) -> Result<String> {
    let answer = browser.command("Accessibility.getFullAXTree", json!({})).await?;
    let mut text = String::new();
    for node in answer["nodes"].as_array().into_iter().flatten() {
        let word = |key: &str| node[key]["value"].as_str().unwrap_or_default().to_owned();
        if node["ignored"] != true {
            writeln!(text, "{} \"{}\"", word("role"), word("name"))?;
        }
    }
    Ok(text)
}
