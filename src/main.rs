//! The program: hands its arguments to the library and exits with its answer.

fn main() -> std::process::ExitCode {
    std::process::ExitCode::SUCCESS
}
