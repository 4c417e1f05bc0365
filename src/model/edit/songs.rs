//! Edits of the club's songs.

use std::sync::Arc;

use super::{Made, Refused, fresh, set, shift};
use crate::model::club::Club;
use crate::model::ids::{ActivityId, SongId};
use crate::model::limits;
use crate::model::song::Song;

pub(super) fn add(club: &mut Club, song: &Song) -> Result<Made, Refused> {
    limits::count("songs", club.songs.len() + 1, limits::SONGS)?;
    let mut song = limits::tidy_song(song);
    check(club, &song)?;
    song.id = SongId(fresh(club)?);
    let id = song.id;
    club.songs.push(Arc::new(song));
    Ok(Made::Song(id))
}

pub(super) fn change(club: &mut Club, song: &Song) -> Result<Made, Refused> {
    let song = limits::tidy_song(song);
    let at = at(club, song.id)?;
    check(club, &song)?;
    set(&mut club.songs[at], song);
    Ok(Made::Nothing)
}

pub(super) fn shift_to(club: &mut Club, id: SongId, to: usize) -> Result<Made, Refused> {
    let at = at(club, id)?;
    shift(&mut club.songs, at, to);
    Ok(Made::Nothing)
}

pub(super) fn remove(club: &mut Club, id: SongId) -> Result<Made, Refused> {
    let at = at(club, id)?;
    club.songs.remove(at);
    Ok(Made::Nothing)
}

/// A song is no longer sung in an activity that is gone.
pub(super) fn forget_activity(club: &mut Club, id: ActivityId) {
    let songs = club.songs.iter_mut();
    for song in songs.filter(|s| s.activity == Some(id)) {
        Arc::make_mut(song).activity = None;
    }
}

fn check(club: &Club, song: &Song) -> Result<(), Refused> {
    limits::song(song)?;
    match song.activity {
        Some(id) if club.activity(id).is_none() => Err(Refused::gone("activity")),
        _ => Ok(()),
    }
}

fn at(club: &Club, id: SongId) -> Result<usize, Refused> {
    let at = club.songs.iter().position(|s| s.id == id);
    at.ok_or_else(|| Refused::gone("song"))
}
