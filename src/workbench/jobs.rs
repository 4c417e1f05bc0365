//! Work in the background: the only threads besides the window's own. A job sends reports over one
//! channel; reports of a job that is no longer ours are dropped by its number. Laying out many
//! sheets has a channel for each time, and so has working out turns; whoever asked says whether the answer
//! still counts.

use std::ops::ControlFlow;
use std::path::PathBuf;
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::mpsc::{Receiver, Sender, TryRecvError, channel};
use std::thread::{self, JoinHandle};

use super::incoming;
use super::printing::{self, Go, Order, Outcome, Step};
use super::unsaved::Kept;
use super::view::Progress;
use crate::layout::{self, Laid, Request};
use crate::model::club::Club;
use crate::plan::rotation::{Answer, Effort};
use crate::plan::turns::Round;
use crate::storage::unsaved::{Keeper, Origin};

/// What a job tells.
#[derive(Debug)]
enum Report {
    Doing(Step),
    Ended(Box<Outcome>),
}

/// At most one job, and its reports.
#[derive(Debug)]
pub(super) struct Jobs {
    sender: Sender<(u64, Report)>,
    receiver: Receiver<(u64, Report)>,
    started: u64,
    running: Option<Running>,
}

#[derive(Debug)]
struct Running {
    number: u64,
    stop: Arc<AtomicBool>,
    thread: Option<JoinHandle<()>>,
    now: Step,
}

impl Default for Jobs {
    fn default() -> Self {
        let (sender, receiver) = channel();
        Self {
            sender,
            receiver,
            started: 0,
            running: None,
        }
    }
}

impl Jobs {
    /// Whether something is being written.
    pub const fn is_running(&self) -> bool {
        self.running.is_some()
    }

    /// Starts writing sheets. False if the system gives no thread for it.
    pub fn start(&mut self, order: Order) -> bool {
        self.stop_and_wait();
        self.started += 1;
        let number = self.started;
        let stop = Arc::new(AtomicBool::new(false));
        let thread = {
            let (sender, stop) = (self.sender.clone(), stop.clone());
            // Who no longer listens does not want the report.
            let tell = move |report| drop(sender.send((number, report)));
            thread::Builder::new()
                .name("writing".to_owned())
                .spawn(move || {
                    let outcome = printing::write(&order, &mut |step| {
                        tell(Report::Doing(step));
                        if stop.load(Ordering::Relaxed) {
                            Go::Stop
                        } else {
                            Go::On
                        }
                    });
                    tell(Report::Ended(Box::new(outcome)));
                })
        };
        let Ok(thread) = thread else {
            return false;
        };
        self.running = Some(Running {
            number,
            stop,
            thread: Some(thread),
            now: Step {
                doing: "Laying out".to_owned(),
                done: 0,
                total: 0,
            },
        });
        true
    }

    /// Asks the job to stop after the file it is writing.
    pub fn stop(&self) {
        if let Some(running) = &self.running {
            running.stop.store(true, Ordering::Relaxed);
        }
    }

    fn stop_and_wait(&mut self) {
        self.stop();
        if let Some(thread) = self.running.take().and_then(|mut r| r.thread.take()) {
            // A thread that panicked has told its story on the way.
            drop(thread.join());
        }
    }

    /// Takes in what was reported: whether anything was, and how the job ended if it did.
    pub fn poll(&mut self) -> (bool, Option<Outcome>) {
        let mut changed = false;
        let mut ended = None;
        while let Ok((number, report)) = self.receiver.try_recv() {
            let Some(running) = self.running.as_mut().filter(|r| r.number == number) else {
                continue;
            };
            changed = true;
            match report {
                Report::Doing(step) => running.now = step,
                Report::Ended(outcome) => {
                    self.running = None;
                    ended = Some(*outcome);
                }
            }
        }
        (changed, ended)
    }

    /// Whether the thread is gone without having said how it ended.
    pub fn is_lost(&self) -> bool {
        let thread = self.running.as_ref().and_then(|r| r.thread.as_ref());
        thread.is_some_and(JoinHandle::is_finished)
    }

    /// Forgets a job that is gone.
    pub fn forget(&mut self) {
        self.running = None;
    }

    /// How far the job has come.
    pub fn progress(&self) -> Option<Progress<'_>> {
        let step = &self.running.as_ref()?.now;
        Some(Progress {
            doing: &step.doing,
            done: step.done,
            total: step.total,
        })
    }
}

/// Reads pictures one after the other; nothing if the system gives no thread for it. Whoever drops
/// the receiver no longer wants them, and nothing is written, so nobody waits for the thread.
pub(super) fn reading(files: Vec<PathBuf>) -> Option<Receiver<incoming::Read>> {
    let (sender, receiver) = channel();
    let work = move || incoming::read_all(&files, |read| sender.send(read).is_ok());
    let thread = thread::Builder::new()
        .name("pictures".to_owned())
        .spawn(work);
    thread.is_ok().then_some(receiver)
}

/// Keeps changes that are not saved; nothing if the system gives no thread for it.
pub(super) fn keeping(
    mut keeper: Keeper,
    club: Arc<Club>,
    origin: Option<Origin>,
) -> Option<JoinHandle<Kept>> {
    let work = move || {
        let wrong = keeper.keep(&club, origin.as_ref()).err();
        (keeper, wrong)
    };
    let thread = thread::Builder::new().name("keeping".to_owned());
    thread.spawn(work).ok()
}

impl Drop for Jobs {
    /// A half-written folder is better than a half-written file.
    fn drop(&mut self) {
        self.stop_and_wait();
    }
}

/// Laying out in the background, one at a time, each for a key that says what it is of.
#[derive(Debug)]
pub(super) struct LayingOut<K> {
    running: Option<(K, Receiver<Laid>)>,
}

/// What came of laying out.
pub(super) enum Came<K> {
    /// Sheets of a key.
    Laid(K, Laid),
    /// Nothing, by a fault of the program.
    Lost(K),
}

impl<K> Default for LayingOut<K> {
    fn default() -> Self {
        Self { running: None }
    }
}

impl<K> LayingOut<K> {
    /// Whether something is being laid out.
    pub const fn is_running(&self) -> bool {
        self.running.is_some()
    }

    /// Starts laying out. False if the system gives no thread for it.
    pub fn start(&mut self, key: K, club: Arc<Club>, request: Request) -> bool {
        let (sender, receiver) = channel();
        // Nothing is written, so nobody waits for the thread when its sheets are no longer wanted.
        let thread = thread::Builder::new()
            .name("laying out".to_owned())
            .spawn(move || drop(sender.send(layout::lay_out(&club, &request))));
        if thread.is_err() {
            return false;
        }
        self.running = Some((key, receiver));
        true
    }

    /// What came, once, when it has come.
    pub fn poll(&mut self) -> Option<Came<K>> {
        let came = self.running.as_ref()?.1.try_recv();
        if matches!(came, Err(TryRecvError::Empty)) {
            return None;
        }
        let (key, _) = self.running.take()?;
        Some(match came {
            Ok(laid) => Came::Laid(key, laid),
            Err(_) => Came::Lost(key),
        })
    }
}

/// Turns being worked out, for a key that says of what. Whoever drops it no longer wants them, and
/// nothing is written, so nobody waits for the thread.
#[derive(Debug)]
pub(super) struct WorkingOut<K> {
    key: K,
    stop: Arc<AtomicBool>,
    receiver: Receiver<Turned>,
    done: f32,
}

#[derive(Debug)]
enum Turned {
    Done(f32),
    Ended(Box<(Round, Answer)>),
}

/// What came of working out turns.
#[derive(Debug)]
pub(super) enum Worked {
    /// Nothing new, or how far it is.
    On(bool),
    /// An answer.
    Ended(Box<(Round, Answer)>),
    /// Nothing, by a fault of the program.
    Lost,
}

impl<K> WorkingOut<K> {
    /// Starts working out; nothing if the system gives no thread for it.
    pub fn start(key: K, round: Round) -> Option<Self> {
        let (sender, receiver) = channel();
        let stop = Arc::new(AtomicBool::new(false));
        let stopped = stop.clone();
        let work = move || {
            let answer = round.arrange(&Effort::default(), &mut |done| {
                let heard = sender.send(Turned::Done(done)).is_ok();
                match heard && !stopped.load(Ordering::Relaxed) {
                    true => ControlFlow::Continue(()),
                    false => ControlFlow::Break(()),
                }
            });
            // Who no longer listens does not want it.
            drop(sender.send(Turned::Ended(Box::new((round, answer)))));
        };
        let thread = thread::Builder::new().name("turns".to_owned()).spawn(work);
        thread.is_ok().then_some(Self {
            key,
            stop,
            receiver,
            done: 0.0,
        })
    }

    /// What it is of.
    pub const fn key(&self) -> &K {
        &self.key
    }

    /// How much is done, from 0 to 1.
    pub const fn done(&self) -> f32 {
        self.done
    }

    /// Takes in what was told.
    pub fn poll(&mut self) -> Worked {
        let mut changed = false;
        loop {
            match self.receiver.try_recv() {
                Ok(Turned::Done(done)) => {
                    self.done = done;
                    changed = true;
                }
                Ok(Turned::Ended(all)) => return Worked::Ended(all),
                Err(TryRecvError::Empty) => return Worked::On(changed),
                Err(TryRecvError::Disconnected) => return Worked::Lost,
            }
        }
    }
}

impl<K> Drop for WorkingOut<K> {
    fn drop(&mut self) {
        self.stop.store(true, Ordering::Relaxed);
    }
}
