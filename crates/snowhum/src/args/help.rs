//! Help in the keeper's words. What a command does and what is given to it are messages, named by where they stand; the doc
//! comment of a command is how it is typed, for example.

use clap::builder::{PossibleValue, PossibleValuesParser};
use clap::{Arg, Command, ValueEnum};
use snowhum_say::{Language, Tongue, arguments_terminal as text, help};
use std::path::Path;

use super::shared::{Tag, Words};
use crate::keep;

/// In which language help is given: as asked for beside it, else as chosen for the pages of the records.
pub(crate) fn language(typed: &[String]) -> Language {
    let after = |name: &str| {
        typed.iter().enumerate().find_map(|(at, one)| match one.strip_prefix(name)? {
            "" => typed.get(at + 1).map(String::as_str),
            rest => rest.strip_prefix('='),
        })
    };
    let tag = after("--language").and_then(|tag| Tag::from_str(tag, true).ok()).map(Language::from);
    let words = || after("--words").and_then(|words| Words::from_str(words, true).ok()).map(Language::from);
    let kept = || keep::chosen(after("--store").map(Path::new)).language;
    tag.or_else(words).or_else(kept).unwrap_or_default()
}

/// The commands with what is said of each.
pub(crate) fn in_words(mut commands: Command, tongue: Tongue) -> Command {
    commands.build();
    told(commands, "snowhum", "", tongue)
}

/// What stands under a name.
fn said(name: &str, tongue: Tongue) -> Option<String> {
    let name = name.to_lowercase().replace(['_', ' ', '=', '/'], "-");
    help::named(&name).map(|message| tongue.say(&message))
}

/// A command called so, the names of whose own commands begin with `within`.
fn told(command: Command, name: &str, within: &str, tongue: Tongue) -> Command {
    let typed = command.get_long_about().or(command.get_about()).map(ToString::to_string).unwrap_or_default();
    let examples = typed.lines().filter(|line| line.starts_with("snowhum "));
    let examples = examples.map(|typed| tongue.say(&text::example(typed)));
    let about = said(name, tongue).unwrap_or_default();
    let more = said(&format!("{name}-more"), tongue);
    let long: Vec<String> = std::iter::once(about.clone()).chain(more).chain(examples).collect();
    let mut command = command
        .about(about)
        .long_about(long.join("\n\n"))
        .subcommand_help_heading(tongue.say(&text::commands()))
        .subcommand_value_name(tongue.say(&text::command()))
        .mut_args(|arg| given(arg, name, tongue))
        .mut_subcommands(|own| match own.get_name() {
            "help" => told(own, "help", within, tongue),
            called => {
                let name = format!("{within}{called}");
                told(own, &name, &format!("{name}-"), tongue)
            }
        });
    let usage = command.render_usage().to_string().replace("[OPTIONS]", &tongue.say(&text::any_options()));
    let (head, style) = (tongue.say(&text::usage()), command.get_styles().get_usage());
    let page = format!("{{about-with-newline}}\n{style}{head}{style:#} {{usage}}\n\n{{all-args}}{{after-help}}");
    command.override_usage(usage.trim_start_matches("Usage: ").to_owned()).help_template(page)
}

/// What is given to a command called so.
fn given(arg: Arg, command: &str, tongue: Tongue) -> Arg {
    let of =
        |name: &str| said(&format!("{command}-{name}"), tongue).or_else(|| said(&format!("shared-{name}"), tongue));
    let id = arg.get_id().to_string();
    let help = of(&id).unwrap_or_default();
    let heading = if arg.is_positional() { text::arguments() } else { text::options() };
    let arg = arg.help_heading(tongue.say(&heading));
    if !arg.get_action().takes_values() {
        return arg.help(help.clone()).long_help(help);
    }
    let called = |name: &str| said(&format!("value-{name}"), tongue).unwrap_or_else(|| name.to_owned());
    let names: Vec<String> = arg.get_value_names().unwrap_or_default().iter().map(|name| called(name)).collect();
    let default = arg
        .get_default_values()
        .first()
        .map(|value| tongue.say(&text::unless_given(value.to_string_lossy().into_owned())));
    let meant = |value: &PossibleValue| of(&format!("{id}-{}", value.get_name())).unwrap_or_default();
    let values: Vec<_> = arg.get_possible_values().into_iter().map(|one| one.clone().help(meant(&one))).collect();
    let arg = arg.value_names(names).hide_default_value(true).hide_possible_values(true);
    if values.is_empty() {
        return arg.help([Some(help), default].into_iter().flatten().collect::<Vec<_>>().join(" "));
    }
    let list = values.iter().map(|value| value.get_name().to_owned().into()).collect();
    let lines = values.iter().map(|value| format!("- {}: {}", value.get_name(), meant(value)));
    let lines = std::iter::once(tongue.say(&text::each_value())).chain(lines).collect::<Vec<_>>().join("\n");
    let short = [Some(help.clone()), default.clone(), Some(tongue.say(&text::values(list)))];
    let long = [Some(help), Some(lines), default];
    arg.help(short.into_iter().flatten().collect::<Vec<_>>().join(" "))
        .long_help(long.into_iter().flatten().collect::<Vec<_>>().join("\n\n"))
        .value_parser(PossibleValuesParser::new(values))
}

#[cfg(test)]
mod tests {
    use super::{Tongue, help, in_words, said};
    use crate::args::Arguments;
    use clap::{Command, CommandFactory};
    use snowhum_say::Language;
    use std::collections::BTreeSet;

    /// The names of all that is shown of a command and of what is below it, each as its own and as one that is shared.
    fn shown(command: &Command, name: &str, within: &str, into: &mut Vec<[String; 2]>) {
        let own = |name: String| [name.clone(), name];
        into.push(own(name.to_owned()));
        for arg in command.get_arguments() {
            let mut add = |of: &str| into.push(["shared", name].map(|at| format!("{at}-{of}")));
            add(arg.get_id().as_str());
            if arg.get_action().takes_values() {
                let values = arg.get_possible_values();
                values.iter().for_each(|value| add(&format!("{}-{}", arg.get_id(), value.get_name())));
                let names = arg.get_value_names().unwrap_or_default().iter().filter(|name| name.len() > 1);
                into.extend(names.map(|name| own(format!("value-{name}"))));
            }
        }
        for below in command.get_subcommands().filter(|below| !below.is_hide_set()) {
            match below.get_name() {
                "help" => into.push(own("help".to_owned())),
                called => shown(below, &format!("{within}{called}"), &format!("{within}{called}-"), into),
            }
        }
    }

    #[test]
    fn every_command_and_whatever_is_given_to_it_is_told_in_help_and_nothing_else_is() {
        let (mut commands, mut names) = (Arguments::command(), Vec::new());
        commands.build();
        shown(&commands, "snowhum", "", &mut names);
        let is_told = |names: &[String; 2]| names.iter().any(|name| said(name, Tongue::BRITISH).is_some());
        let untold: Vec<_> = names.iter().filter(|names| !is_told(names)).collect();
        assert!(untold.is_empty(), "help.ftl lacks {untold:?}");
        let named: BTreeSet<String> =
            names.into_iter().flatten().map(|name| name.to_lowercase().replace(['_', ' ', '=', '/'], "-")).collect();
        let is_asked = |name: &str| named.contains(name.strip_suffix("-more").unwrap_or(name));
        let is_built = |name: &str| cfg!(feature = "club") || !(name.contains("club") || name.contains("role"));
        let idle = snowhum_say::every().into_iter().filter_map(|message| message.id()?.strip_prefix("help-"));
        let idle: Vec<&str> = idle.filter(|name| is_built(name) && !is_asked(name)).collect();
        assert!(idle.is_empty() && help::named("plan").is_some(), "nothing asks for {idle:?}");
    }

    /// In a language of wide letters whatever stands in plain ones was put there by no message.
    #[test]
    fn every_word_of_help_comes_from_a_message_or_is_typed() {
        fn each(command: Command, found: &mut Vec<String>) {
            let mut command = command.term_width(0);
            let page = command.render_long_help().to_string();
            let is_typed = |line: &str| {
                line.trim_start().starts_with(['-', '<', '[']) || line.contains("snowhum") || line.contains('=')
            };
            let is_plain = |word: &str| {
                word.chars().filter(char::is_ascii_alphabetic).count() > 1 && command.find_subcommand(word).is_none()
            };
            let said =
                |line: &&str| !is_typed(line) && line.split('[').next().unwrap().split_whitespace().any(is_plain);
            let plain = page.lines().filter(said);
            found.extend(plain.map(|line| format!("{}: {line}", command.get_name())));
            command.get_subcommands().filter(|own| !own.is_hide_set()).for_each(|own| each(own.clone(), found));
        }
        let mut found = Vec::new();
        each(in_words(Arguments::command(), Tongue::BRITISH.in_language(Language::Marked)), &mut found);
        assert!(found.is_empty(), "{found:#?}");
    }
}
