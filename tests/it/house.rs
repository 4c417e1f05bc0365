//! The walls of the house: what may use what, and that the map tells the truth.

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};

fn root() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR"))
}

fn rust_files(dir: &Path, into: &mut Vec<PathBuf>) {
    let mut entries: Vec<_> = fs::read_dir(dir)
        .unwrap()
        .map(|e| e.unwrap().path())
        .collect();
    entries.sort();
    for path in entries {
        if path.is_dir() {
            rust_files(&path, into);
        } else if path.extension().is_some_and(|e| e == "rs") {
            into.push(path);
        }
    }
}

/// Every file of `src` with its module (`ui` for `src/ui/boards/mod.rs`) and its code without
/// comments.
fn sources() -> Vec<(PathBuf, String, String)> {
    let src = root().join("src");
    let mut files = Vec::new();
    rust_files(&src, &mut files);
    assert!(files.len() > 10, "too few source files found");
    files
        .into_iter()
        .map(|path| {
            let inside = path.strip_prefix(&src).unwrap();
            let first = inside
                .components()
                .next()
                .unwrap()
                .as_os_str()
                .to_str()
                .unwrap();
            let module = first.trim_end_matches(".rs").to_owned();
            let code = without_comments(&fs::read_to_string(&path).unwrap());
            (inside.to_path_buf(), module, code)
        })
        .collect()
}

fn without_comments(code: &str) -> String {
    code.lines()
        .map(|line| line.find("//").map_or(line, |i| &line[..i]))
        .collect::<Vec<_>>()
        .join("\n")
}

/// The modules of this crate that a piece of code names after `crate::`.
fn used_modules(code: &str) -> Vec<String> {
    let mut used = Vec::new();
    for (i, _) in code.match_indices("crate::") {
        let rest = &code[i + "crate::".len()..];
        match rest.strip_prefix('{') {
            Some(list) => used.extend(top_level_names(list)),
            None => used.push(leading_word(rest)),
        }
    }
    used.retain(|u| !u.is_empty());
    used
}

fn leading_word(text: &str) -> String {
    text.chars()
        .take_while(|c| c.is_alphanumeric() || *c == '_')
        .collect()
}

fn top_level_names(list: &str) -> Vec<String> {
    let (mut depth, mut names, mut start) = (0, Vec::new(), true);
    for (i, c) in list.char_indices() {
        match c {
            '{' => depth += 1,
            '}' if depth == 0 => break,
            '}' => depth -= 1,
            ',' if depth == 0 => start = true,
            c if start && (c.is_alphanumeric() || c == '_') => {
                names.push(leading_word(&list[i..]));
                start = false;
            }
            _ => {}
        }
    }
    names
}

/// The rows of the map: module and what it may use, in order.
fn map() -> Vec<(String, Vec<String>)> {
    let text = fs::read_to_string(root().join("DEVELOPERS.md")).unwrap();
    let rows: Vec<_> = text
        .lines()
        .skip_while(|l| !l.starts_with("| module "))
        .skip(2)
        .take_while(|l| l.starts_with('|'))
        .map(|l| {
            let cells: Vec<_> = l.trim_matches('|').split('|').map(str::trim).collect();
            let uses = cells[2]
                .split_whitespace()
                .filter(|w| *w != "-")
                .map(str::to_owned);
            (cells[0].trim_matches('`').to_owned(), uses.collect())
        })
        .collect();
    assert_eq!(
        rows.len(),
        19,
        "the map has a row for each of the nineteen modules"
    );
    rows
}

#[test]
fn the_map_names_the_modules_of_the_library_in_order() {
    let lib = fs::read_to_string(root().join("src/lib.rs")).unwrap();
    let there: Vec<_> = lib
        .lines()
        .filter_map(|l| l.strip_prefix("pub mod ")?.strip_suffix(';'))
        .map(str::to_owned)
        .collect();
    let mapped: Vec<_> = map().into_iter().map(|(m, _)| m).collect();
    assert_eq!(there, mapped);
}

#[test]
fn every_module_uses_only_what_the_map_allows() {
    let allowed: BTreeMap<_, _> = map().into_iter().collect();
    let mut breaches = Vec::new();
    for (path, module, code) in sources() {
        if module == "lib" || module == "main" {
            continue;
        }
        let allowed = &allowed[&module];
        for used in used_modules(&code) {
            if used != module && !allowed.contains(&used) {
                breaches.push(format!("{} uses {used}", path.display()));
            }
        }
    }
    assert!(
        breaches.is_empty(),
        "walls broken:\n{}",
        breaches.join("\n")
    );
}

#[test]
fn a_module_may_only_use_modules_above_it() {
    let map = map();
    for (i, (module, uses)) in map.iter().enumerate() {
        for used in uses {
            let at = map.iter().position(|(m, _)| m == used);
            assert!(
                at.is_some_and(|at| at < i),
                "{module} may not use {used}: not above it"
            );
        }
    }
}

/// Files whose code holds one of the words, except under the allowed beginnings of paths.
fn found_outside(words: &[&str], allowed: &[&str]) -> Vec<String> {
    let mut found = Vec::new();
    for (path, _, code) in sources() {
        let name = path.to_str().unwrap().replace('\\', "/");
        if allowed.iter().any(|a| name.starts_with(a)) {
            continue;
        }
        for word in words {
            if code.contains(word) {
                found.push(format!("{name}: {word}"));
            }
        }
    }
    found
}

#[test]
fn only_ui_knows_the_toolkit() {
    let found = found_outside(&["egui", "eframe", "rfd::"], &["ui/"]);
    assert!(found.is_empty(), "{found:?}");
}

#[test]
fn only_storage_touches_the_disk() {
    let words = [
        "std::fs",
        "fs::",
        "File::",
        "OpenOptions",
        "read_dir",
        ".exists()",
        ".is_dir()",
    ];
    let found = found_outside(&words, &["storage/", "storage.rs"]);
    assert!(found.is_empty(), "{found:?}");
}

#[test]
fn only_jobs_and_file_dialogs_start_threads() {
    let words = ["thread::spawn", "thread::Builder", "thread::scope"];
    let found = found_outside(&words, &["workbench/jobs", "ui/files"]);
    assert!(found.is_empty(), "{found:?}");
}

#[test]
fn only_the_voice_starts_other_programs() {
    let found = found_outside(
        &["process::Command", "Command::new(", "process::{Child"],
        &["workbench/voice"],
    );
    assert!(found.is_empty(), "{found:?}");
}

#[test]
fn only_workbench_and_cli_read_the_clock() {
    let words = ["SystemTime", "Instant", "Zoned::now", "Timestamp::now"];
    let found = found_outside(&words, &["workbench/", "cli/", "ui/"]);
    assert!(found.is_empty(), "{found:?}");
}

#[test]
fn nothing_depends_on_hash_order() {
    let found = found_outside(
        &["HashMap", "HashSet", "DefaultHasher", " rand::"],
        &["ui/"],
    );
    assert!(found.is_empty(), "use BTreeMap or a sorted list: {found:?}");
}

#[test]
fn every_file_says_what_it_is() {
    let mut files = Vec::new();
    for folder in ["src", "tests", "icons-src"] {
        rust_files(&root().join(folder), &mut files);
    }
    let silent: Vec<_> = files
        .iter()
        .filter(|p| !fs::read_to_string(p).unwrap().starts_with("//!"))
        .collect();
    assert!(silent.is_empty(), "no //! at the top of {silent:?}");
}

#[test]
fn colours_of_the_window_are_in_its_theme() {
    let mut found = found_outside(&["Color32::from_", "Color32::WHITE", "Color32::BLACK"], &[]);
    found.retain(|f| !f.starts_with("ui/theme"));
    assert!(found.is_empty(), "{found:?}");
}

#[test]
fn the_top_of_the_repository_holds_only_what_was_agreed() {
    let agreed = [
        "Cargo.toml",
        "Cargo.lock",
        "README.md",
        "DEVELOPERS.md",
        "LICENSE-MIT",
        "LICENSE-APACHE",
        "src",
        "assets",
        "icons-src",
        "tests",
    ];
    for entry in fs::read_dir(root()).unwrap() {
        let name = entry.unwrap().file_name().into_string().unwrap();
        // Build output and what the demo writes are ignored by git, the rest is hidden.
        let passing = name.starts_with('.') || name == "target" || name == "daystrand-demo";
        assert!(
            passing || agreed.contains(&name.as_str()),
            "{name} does not belong at the top"
        );
    }
}

#[test]
fn the_map_of_folders_is_true() {
    let text = fs::read_to_string(root().join("DEVELOPERS.md")).unwrap();
    for folder in ["assets", "icons-src", "tests", ".ci"] {
        assert!(root().join(folder).is_dir());
        assert!(
            text.contains(&format!("| `{folder}/` |")),
            "{folder} is not in the map"
        );
    }
}
