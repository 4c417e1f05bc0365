//! The pictures of the help, unpacked when first seen.

use std::collections::BTreeMap;

use egui::{ColorImage, Context, TextureHandle, TextureOptions};

use crate::assets;

/// The pictures seen so far.
#[derive(Default)]
pub struct Pictures(BTreeMap<&'static str, Option<TextureHandle>>);

impl Pictures {
    /// A picture by its name.
    pub fn get(&mut self, ctx: &Context, name: &'static str) -> Option<&TextureHandle> {
        let kept = self.0.entry(name).or_insert_with(|| load(ctx, name));
        kept.as_ref()
    }
}

fn load(ctx: &Context, name: &str) -> Option<TextureHandle> {
    let bytes = assets::help_picture(name)?;
    let image = image::load_from_memory(bytes).ok()?.to_rgba8();
    let size = [image.width() as usize, image.height() as usize];
    let colours = ColorImage::from_rgba_unmultiplied(size, image.as_raw());
    Some(ctx.load_texture(format!("help {name}"), colours, TextureOptions::LINEAR))
}
