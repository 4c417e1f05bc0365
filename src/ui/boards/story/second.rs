//! The story in a second language: a field under each sentence, and who read it through.

use egui::{Align2, Id, Image, Ui, Vec2, load::SizedTexture, vec2};

use super::{StoryState, choose, page, section};
use crate::model::people::Participant;
use crate::page::{Block, Page, hit};
use crate::story::{Line, StoryPage};
use crate::text::runs_left;
use crate::ui::desk::Desk;
use crate::ui::theme;
use crate::ui::widgets::field::Field;
use crate::ui::widgets::{form, words};
use crate::units;
use crate::workbench::story::ToldStory;

/// Languages that run from right to left, by the first part of their tag.
const LEFTWARDS: [&str; 11] = [
    "ar", "arc", "ckb", "dv", "fa", "he", "ps", "sd", "syr", "ur", "yi",
];
/// Names of some languages by the first part of their tag (ISO 639).
const NAMES: [(&str, &str); 24] = [
    ("ar", "Arabic"),
    ("bn", "Bengali"),
    ("cy", "Welsh"),
    ("da", "Danish"),
    ("de", "German"),
    ("en", "English"),
    ("es", "Spanish"),
    ("fa", "Persian"),
    ("fr", "French"),
    ("he", "Hebrew"),
    ("hi", "Hindi"),
    ("it", "Italian"),
    ("mi", "Māori"),
    ("nl", "Dutch"),
    ("pl", "Polish"),
    ("pt", "Portuguese"),
    ("ro", "Romanian"),
    ("ru", "Russian"),
    ("so", "Somali"),
    ("tr", "Turkish"),
    ("uk", "Ukrainian"),
    ("ur", "Urdu"),
    ("vi", "Vietnamese"),
    ("zh", "Chinese"),
];
/// How large a line of the page is shown below its field.
const SHOWN: f32 = 0.72;
/// Widest picture of a line in pixels.
const WIDEST: f32 = 1600.0;

/// The second language of the chosen participant's story.
fn language(person: &Participant) -> Option<&str> {
    person.telling.second.as_ref().map(|s| s.language.trim())
}

/// Whether what is written in it stands at the right.
fn stands_right(language: &str, text: &str) -> bool {
    let first = primary(language);
    match text.trim().is_empty() {
        true => LEFTWARDS.contains(&first.as_str()),
        false => runs_left(text),
    }
}

/// The heading of a page in it.
pub fn heading(ui: &mut Ui, desk: &mut Desk<'_>, told: &ToldStory, page: &StoryPage) {
    let id = Id::unique(("second-heading", page.at));
    let name = format!("Heading in the second language: {}", page.heading);
    if told.story.depth != crate::model::telling::Depth::Pictures {
        field(
            ui,
            desk,
            id,
            &name,
            (&page.heading, page.heading_second.as_deref()),
        );
    }
}

/// A sentence in it, and how it looks on paper where this window cannot show it so.
pub fn line(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut StoryState,
    told: &ToldStory,
    of: &StoryPage,
    line: &Line,
) {
    if line.text.is_empty() {
        return;
    }
    let id = Id::unique(("second", of.at, line.at));
    let name = format!("In the second language: {}", line.text);
    field(ui, desk, id, &name, (&line.text, line.second.as_deref()));
    let Some(second) = line.second.as_deref().filter(|s| runs_left(s)) else {
        return;
    };
    as_printed(ui, state, told, of, second);
}

fn field(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    id: Id,
    name: &str,
    (sentence, now): (&str, Option<&str>),
) {
    let Some(language) = desk.view.participant.and_then(language) else {
        return;
    };
    let now = now.unwrap_or_default();
    let typed = desk.drafts.typed(id).unwrap_or(now).to_owned();
    let hint = format!("In {}", words_of(language));
    let field = Field::new(id, name, now)
        .hint(&hint)
        .wraps()
        .flush_right(stands_right(language, &typed));
    let width = ui.available_width();
    let height = field.wrapped_height(ui, desk.drafts, width);
    let (_, place) = ui.allocate_space(vec2(width, height));
    if let Some(text) = field.show_at(ui, desk.drafts, place) {
        choose::telling(desk, |t| {
            if let Some(second) = &mut t.second {
                second.set(sentence, &text);
            }
        });
    }
}

/// The very line of the page: letters joined and in their order.
fn as_printed(ui: &mut Ui, state: &mut StoryState, told: &ToldStory, of: &StoryPage, second: &str) {
    let Some((i, _)) = told.page(of.at) else {
        return;
    };
    let (first, last) = told.places[i];
    let found = (first..=last).find_map(|leaf| {
        let (block, area) = place_of(&told.leaves[leaf], second)?;
        Some((leaf, block, area))
    });
    let Some((leaf, block, area)) = found else {
        return;
    };
    let points = |l: units::Length| l.to_px(96.0) as f32 * SHOWN;
    let size = vec2(points(area.w), points(area.h));
    let fit = (ui.available_width() / size.x).min(1.0);
    let size: Vec2 = size * fit;
    let px = (size.x * ui.ctx().pixels_per_point()).clamp(16.0, WIDEST) as u32;
    let key = (told.times, leaf, block + 1, px);
    let page = &told.leaves[leaf];
    let alone = Page {
        blocks: vec![page.blocks[block].clone()],
        title: String::new(),
        lang: page.lang.clone(),
        ..*page
    };
    let Some(texture) = state.lines.part(ui.ctx(), key, &alone, area) else {
        return;
    };
    let (_, row) = ui.allocate_space(vec2(ui.available_width(), size.y));
    let at = egui::Rect::from_min_size(row.right_top() - vec2(size.x, 0.0), size);
    let room = row.with_max_x(at.left() - 10.0);
    let (font, soft) = (theme::regular(14.0), theme::of(ui.ctx()).col.soft);
    words::line(
        ui.painter(),
        room,
        Align2::RIGHT_CENTER,
        "as printed",
        font,
        soft,
    );
    let image = Image::new(SizedTexture::new(texture.id(), size)).corner_radius(6);
    let name = format!("As printed: {second}");
    ui.put(at, image.alt_text(name))
        .on_hover_text("As it will be printed");
}

fn place_of(page: &Page, words: &str) -> Option<(usize, units::Rect)> {
    let says = |b: &Block| page::says(b, words);
    let i = page.blocks.iter().position(says)?;
    let area = hit::block_box(&page.blocks[i])?;
    Some((i, area.shrink(-units::Length::mm(1.5))))
}

/// The name of a language; its tag where the name is not known here.
fn words_of(language: &str) -> String {
    let first = primary(language);
    let named = NAMES.iter().find(|(tag, _)| *tag == first);
    match (named, language) {
        (Some((_, name)), _) => (*name).to_owned(),
        (None, "") => "the second language".to_owned(),
        (None, tag) => format!("the second language ({tag})"),
    }
}

/// The first part of a tag.
fn primary(language: &str) -> String {
    let first = language.split(['-', '_']).next().unwrap_or_default();
    first.to_lowercase()
}

/// Who read it through, and how much is missing.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, told: &ToldStory) {
    let (Some(shown), Some(person)) = (&told.story.second, desk.view.participant) else {
        return;
    };
    section(ui, "Second language");
    let missing = match shown.missing {
        0 => "Every heading and sentence has its words.".to_owned(),
        1 => "1 heading or sentence is still missing.".to_owned(),
        n => format!("{n} headings and sentences are still missing."),
    };
    let unchecked = if shown.checked_by.is_empty() {
        " Not yet checked by a reader."
    } else {
        ""
    };
    words::soft(ui, &format!("{missing}{unchecked}"));
    let id = Id::unique(("second-checked", person.id));
    let was = &shown.checked_by;
    let entered = form::block(ui, "Read through by", 320.0, theme::CONTROL, |ui| {
        let width = ui.available_width();
        Field::new(id, "Read through by", was)
            .hint("A name")
            .show(ui, desk.drafts, width)
    });
    if let Some(name) = entered {
        choose::telling(desk, |t| {
            if let Some(second) = &mut t.second {
                second.checked_by = name.trim().to_owned();
            }
        });
    }
    // The title has its words too, on the first page.
    let title = told.story.title.clone();
    let now = told.story.title_second.clone();
    let id = Id::unique(("second-title", person.id));
    let name = format!("Title in the second language: {title}");
    let width = ui.available_width();
    form::block(ui, "Title of the story", width, theme::CONTROL, |ui| {
        field(ui, desk, id, &name, (&title, now.as_deref()));
    });
}
