//! Programs that the chores need beyond a Rust compiler, and how to get them.

use anyhow::{Context, Result, bail, ensure};
use std::path::PathBuf;
use std::process::{Command, Stdio};

/// One program.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Need {
    /// What it is and what for.
    pub(crate) what: &'static str,
    /// A command that succeeds where it is present.
    pub(crate) probe: &'static str,
    /// A command that installs it on Debian (`apt-get install -y …`) or anywhere (`rustup …`).
    pub(crate) install: &'static str,
    /// What to do on other systems.
    pub(crate) elsewhere: &'static str,
}

/// What `cargo xtask test` needs.
pub(crate) const TEST: &[Need] = &[
    Need {
        what: "rustfmt, which checks the format",
        probe: "cargo fmt --version",
        install: "rustup component add rustfmt",
        elsewhere: "install the rustfmt that came with your compiler",
    },
    Need {
        what: "clippy, which checks the lints",
        probe: "cargo clippy --version",
        install: "rustup component add clippy",
        elsewhere: "install the clippy that came with your compiler",
    },
    Need {
        what: "PostgreSQL, on which a club's records are tried",
        probe: "dpkg-query --show postgresql",
        install: "apt-get install -y postgresql",
        elsewhere: "the tests look for version 15 or newer in /usr/lib/postgresql/VERSION/bin, where Debian puts it",
    },
];

/// What the tests in a real browser need.
pub(crate) const BROWSER: &[Need] = &[
    Need {
        what: "chromium, in which the pages are tried",
        probe: "chromium --version",
        install: "apt-get install -y chromium",
        elsewhere: "install Chromium so that `chromium` starts it",
    },
    Need {
        what: "chromedriver, which drives chromium",
        probe: "chromedriver --version",
        install: "apt-get install -y chromium-driver",
        elsewhere: "install the chromedriver of the same version as Chromium",
    },
    Need {
        what: "npm, which fetches the checker of accessibility",
        probe: "npm --version",
        install: "apt-get install -y npm",
        elsewhere: "install Node.js with its npm",
    },
    Need {
        what: "pdftotext, which reads printed pages back",
        probe: "pdftotext -v",
        install: "apt-get install -y poppler-utils",
        elsewhere: "install Poppler's utilities",
    },
];

/// What counting instructions needs.
pub(crate) const COUNTS: &[Need] = &[Need {
    what: "valgrind, which counts instructions",
    probe: "valgrind --version",
    install: "apt-get install -y valgrind",
    elsewhere: "install valgrind by your system's packages",
}];

/// What packing needs.
pub(crate) const PACKAGE: &[Need] = &[
    Need {
        what: "cargo-deb, which makes Debian packages",
        probe: "cargo deb --version",
        install: "cargo install --locked cargo-deb",
        elsewhere: "cargo install --locked cargo-deb",
    },
    Need {
        what: "cargo-auditable, which puts the list of its parts into the program",
        probe: "cargo auditable --version",
        install: "cargo install --locked cargo-auditable",
        elsewhere: "cargo install --locked cargo-auditable",
    },
];

/// What trying packages in a bare system needs.
pub(crate) const BARE: &[Need] = &[Need {
    what: "mmdebstrap, which makes a bare Debian",
    probe: "mmdebstrap --version",
    install: "apt-get install -y mmdebstrap",
    elsewhere: "install mmdebstrap by your system's packages",
}];

/// Installs what is missing.
///
/// # Errors
/// Names the program, and how to get it, where it is missing and cannot be installed from here.
pub(crate) fn meet(needs: &[Need]) -> Result<()> {
    let missing: Vec<&Need> = needs.iter().filter(|need| !succeeds(need.probe)).collect();
    let from_lists = missing.iter().any(|need| need.install.starts_with("apt-get install"));
    if from_lists && run("apt-get update -qq").is_err() {
        println!("the lists of packages are as old as they are: `apt-get update` failed");
    }
    for need in missing {
        println!("missing: {}; trying `{}`", need.what, need.install);
        let installed = run(need.install).and_then(|()| {
            ensure!(succeeds(need.probe), "`{}` still fails", need.probe);
            Ok(())
        });
        installed.with_context(|| format!("missing: {}. Elsewhere: {}", need.what, need.elsewhere))?;
    }
    Ok(())
}

/// Where a program of the search path lies; its name alone if nowhere.
pub(crate) fn place_of(program: &str) -> PathBuf {
    let path = std::env::var_os("PATH").unwrap_or_default();
    let mut places = std::env::split_paths(&path).map(|folder| folder.join(program));
    places.find(|place| place.is_file()).unwrap_or_else(|| PathBuf::from(program))
}

fn succeeds(words: &str) -> bool {
    command(words)
        .and_then(|mut command| Ok(command.stdout(Stdio::null()).stderr(Stdio::null()).status()?))
        .is_ok_and(|status| status.success())
}

fn run(words: &str) -> Result<()> {
    crate::house::pass(&mut command(words)?)
}

fn command(words: &str) -> Result<Command> {
    let mut words = words.split_whitespace();
    let Some(program) = words.next() else { bail!("no command given") };
    let mut command = Command::new(program);
    command.args(words);
    Ok(command)
}

#[cfg(test)]
mod tests {
    use super::{Need, meet};

    #[test]
    fn what_is_present_is_not_installed() {
        let present = Need { what: "cargo", probe: "cargo --version", install: "false", elsewhere: "" };
        assert!(meet(&[present]).is_ok());
    }

    #[test]
    fn what_cannot_be_had_is_named_with_the_way_to_get_it() {
        let absent = Need {
            what: "the moon",
            probe: "no-such-program-anywhere",
            install: "no-such-installer-anywhere",
            elsewhere: "wait for night",
        };
        let told = format!("{:#}", meet(&[absent]).unwrap_err());
        assert!(told.contains("the moon") && told.contains("wait for night"), "{told}");
    }
}
