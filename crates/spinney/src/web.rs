//! The host of the screens: the desk's screens by HTTP, for this machine alone.
//!
//! From an open collection to pages on 127.0.0.1, until somebody ends it. One thread takes
//! connections and reads and writes bytes; another, the clerk, sits at the desk and keeps the
//! journal. It decides nothing that a person sees and sends nothing to anybody else.

mod answer;
mod beside;
pub(crate) mod clerk;
mod ending;
mod guard;
pub(crate) mod kept;
mod languages;
pub(crate) mod limits;
mod patient;
mod reading;
pub(crate) mod room;

use std::net::{Ipv4Addr, SocketAddr};
use std::sync::Arc;

use axum::Router;
use axum::body::Body;
use axum::extract::State;
use axum::http::{Method, Request};
use axum::response::Response;
use hyper::server::conn::http1;
use hyper_util::rt::{TokioIo, TokioTimer};
use hyper_util::service::TowerToHyperService;
use spinney_voice::Tongue;
use tokio::io::{AsyncReadExt, AsyncWriteExt};
use tokio::net::{TcpListener, TcpStream};
use tokio::sync::{OwnedSemaphorePermit, Semaphore};

use crate::failure::{Failure, trouble};
use clerk::{Clerk, Sitting};
use ending::Ending;
use guard::Refusal;
use limits::{Bounds, Patience};
use patient::Patient;
use room::Room;

/// What every connection needs to know.
struct Host {
    port: u16,
    clerk: Clerk,
    ending: Ending,
    /// Marks what was sent in this run, so that a browser need not fetch it twice.
    run: String,
    /// Room for forms that arrive or wait, and for large answers on their way.
    room: Room,
    bounds: Bounds,
}

/// A place where pages can be asked for; nobody answers yet.
pub(crate) struct Door {
    listener: std::net::TcpListener,
    port: u16,
}

impl Door {
    /// Takes a port of this machine, seen from this machine alone; 0: any that is free.
    pub(crate) fn open(port: u16) -> Result<Self, Failure> {
        let address = SocketAddr::from((Ipv4Addr::LOCALHOST, port));
        let listener = std::net::TcpListener::bind(address);
        let failed = |error: std::io::Error| {
            let texts = [("port", port.into()), ("why", trouble(&error).into())];
            Failure::new("failure-port", texts)
        };
        let listener = listener.map_err(failed)?;
        listener.set_nonblocking(true).map_err(failed)?;
        let port = listener.local_addr().map_err(failed)?.port();
        Ok(Self { listener, port })
    }

    /// The address for a browser.
    pub(crate) fn address(&self) -> String {
        format!("http://127.0.0.1:{}/", self.port)
    }

    /// Answers until the person ends it.
    pub(crate) fn answer(self, sitting: Sitting) -> Result<(), Failure> {
        self.answer_until(sitting, limits::BOUNDS, told_to_end, || {
            let _nothing_more = crate::files::clear_away();
            std::process::exit(ENDED_AT_ONCE)
        })
    }

    /// Answers until something has happened; where that happens again before the end, it ends
    /// `at_once`.
    fn answer_until<E: Future<Output = std::io::Result<()>>>(
        self,
        sitting: Sitting,
        bounds: Bounds,
        told: impl Fn() -> E,
        at_once: impl FnOnce(),
    ) -> Result<(), Failure> {
        let failed = |error: std::io::Error| {
            Failure::new("failure-screens", [("why", trouble(&error).into())])
        };
        let ending = Ending::not_yet();
        let (clerk, at_work) = Clerk::sit_down(sitting, ending.clone()).map_err(failed)?;
        let host = Arc::new(Host {
            port: self.port,
            clerk,
            ending: ending.clone(),
            run: format!("\"{:x}-{:x}\"", std::process::id(), clerk::now()),
            room: Room::of(bounds.room),
            bounds,
        });
        let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build();
        let runtime = runtime.map_err(failed)?;
        let ended: std::io::Result<()> = runtime.block_on(async {
            let listener = TcpListener::from_std(self.listener)?;
            let places = Arc::new(Semaphore::new(bounds.connections));
            tokio::select! {
                () = take_connections(listener, host, &places) => {}
                ended = ending::come(&ending, told, at_once) => ended?,
            }
            // Those who are told so, and the answer to what was kept last.
            let all = u32::try_from(bounds.connections).unwrap_or(u32::MAX);
            let _ = tokio::time::timeout(limits::LAST_ANSWERS, places.acquire_many(all)).await;
            Ok(())
        });
        ended.map_err(failed)?;
        // Whoever still asks is cut off; the clerk sees that nobody can ask any more.
        drop(runtime);
        at_work.finish();
        Ok(())
    }
}

/// The exit code of a program that a person ended a second time (128 and the number of SIGINT).
const ENDED_AT_ONCE: i32 = 130;

/// Waits until the person presses Ctrl-C, or the machine is shut down.
async fn told_to_end() -> std::io::Result<()> {
    #[cfg(unix)]
    {
        use tokio::signal::unix::{SignalKind, signal};
        let mut shut_down = signal(SignalKind::terminate())?;
        tokio::select! {
            pressed = tokio::signal::ctrl_c() => pressed,
            _ = shut_down.recv() => Ok(()),
        }
    }
    #[cfg(not(unix))]
    tokio::signal::ctrl_c().await
}

async fn take_connections(listener: TcpListener, host: Arc<Host>, places: &Arc<Semaphore>) {
    let patience = host.bounds.patience;
    let ending = host.ending.clone();
    let beside = Arc::new(Semaphore::new(limits::MOST_TURNED_AWAY));
    let router = Router::new().fallback(answer_one).with_state(host);
    loop {
        let Ok((stream, _)) = listener.accept().await else {
            // Out of file handles, most likely: some of the connections will end soon.
            tokio::time::sleep(limits::AFTER_TROUBLE).await;
            continue;
        };
        match Arc::clone(places).try_acquire_owned() {
            Ok(place) => {
                let ending = ending.clone();
                drop(tokio::spawn(serve(stream, router.clone(), patience, ending, place)));
            }
            // Where even those wait who are to be told so, nothing is left but to hang up.
            Err(_) => {
                if let Ok(place) = Arc::clone(&beside).try_acquire_owned() {
                    drop(tokio::spawn(turn_away(stream, patience, place)));
                }
            }
        }
    }
}

async fn serve(
    stream: TcpStream,
    router: Router,
    patience: Patience,
    ending: Ending,
    _place: OwnedSemaphorePermit,
) {
    // Pages are small and a person waits for them.
    let _ = stream.set_nodelay(true);
    let connection = http1::Builder::new()
        .timer(TokioTimer::new())
        .header_read_timeout(patience.head)
        .max_headers(limits::MOST_HEADERS)
        .max_buf_size(limits::LONGEST_HEAD)
        .serve_connection(
            TokioIo::new(Patient::new(stream, patience)),
            TowerToHyperService::new(router),
        );
    let mut connection = std::pin::pin!(connection);
    // A browser that goes away in the middle of an answer is no trouble of ours.
    tokio::select! {
        _ = connection.as_mut() => {}
        () = ending.ended() => {
            // One more answer, and no request after it.
            connection.as_mut().graceful_shutdown();
            let _ = connection.await;
        }
    }
}

/// Says that there is no room, and listens until the other side has heard it: a connection that
/// is closed with something unread in it takes the answer back.
async fn turn_away(mut stream: TcpStream, patience: Patience, _place: OwnedSemaphorePermit) {
    let said = async {
        stream.write_all(&guard::full_house()).await?;
        stream.shutdown().await?;
        let mut unread = [0; 4 << 10];
        while stream.read(&mut unread).await? > 0 {}
        std::io::Result::Ok(())
    };
    // Whoever does not hear it in time is gone.
    let _ = tokio::time::timeout(patience.turned_away, said).await;
}

/// One request, from the guard at the door to the headers of the answer.
async fn answer_one(State(host): State<Arc<Host>>, request: Request<Body>) -> Response {
    let head_only = request.method() == Method::HEAD;
    let t = Tongue::for_person(&languages::read(request.headers()));
    let response = match guard::let_in(host.port, &request) {
        Err(refusal) => guard::refused(t, refusal),
        Ok(()) => answer_guest(&host, t, request).await,
    };
    guard::with_headers(response, head_only)
}

async fn answer_guest(host: &Host, t: Tongue, request: Request<Body>) -> Response {
    if let Some(unchanged) = answer::unchanged(&request, &host.run) {
        return unchanged;
    }
    if let Some(chosen) = languages::chosen(request.uri()) {
        return chosen;
    }
    let read = reading::read(request, &host.room, host.bounds.patience.body).await;
    let Some((asked, trouble, place)) = read else { return guard::refused(t, Refusal::Busy) };
    match host.clerk.ask(asked, trouble, place).await {
        Ok(done) => answer::of(done, &host.run, &host.room)
            .unwrap_or_else(|| guard::refused(t, Refusal::Busy)),
        Err(refusal) => guard::refused(t, refusal),
    }
}

#[cfg(test)]
mod tests;
