//! What the file may do: nothing but its own style, script, letters and photographs. It can fetch nothing and send
//! nothing.

use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use sha2::{Digest as _, Sha256};

/// The content security policy (level 3) of a file with this style and this script.
pub fn policy(style: &str, script: &str, photographs: bool) -> String {
    let images = if photographs { " img-src data:;" } else { "" };
    format!(
        "default-src 'none'; style-src '{}'; script-src '{}'; font-src data:;{images} \
         base-uri 'none'; form-action 'none'",
        source(style),
        source(script)
    )
}

/// The hash of what stands in a style or script, as a source of a policy.
pub fn source(content: &str) -> String {
    format!("sha256-{}", STANDARD.encode(Sha256::digest(content)))
}
