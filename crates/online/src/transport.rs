//! One question over HTTP, with a limit on everything.

use crate::Why;
use crate::endpoints::is_this_machine;
use std::time::Duration;
use ureq::Agent;
use ureq::http::{HeaderMap, Uri, header};

/// Largest body that is taken: a forecast has 50 to 500 kB.
const LARGEST_BODY: u64 = 4 << 20;
/// Most times that a service may point to another page of its own.
const REDIRECTS: usize = 2;

/// Asks pages, on this machine without a proxy, elsewhere encrypted alone.
#[derive(Debug, Clone)]
pub(crate) struct Transport {
    agent: Agent,
    patience: Duration,
}

/// What is asked.
pub(crate) struct Question<'a> {
    pub(crate) url: &'a str,
    /// The name it is asked under.
    pub(crate) user_agent: &'a str,
    /// Only if changed since; the service's own words.
    pub(crate) since: Option<&'a str>,
}

/// What a service says.
#[derive(Debug)]
pub(crate) struct Answer {
    pub(crate) status: u16,
    pub(crate) headers: Headers,
    /// Empty unless the status is 200 or 203.
    pub(crate) body: String,
}

/// The headers that matter.
#[derive(Debug, Clone, Default)]
pub(crate) struct Headers {
    pub(crate) age: Option<String>,
    pub(crate) cache_control: Option<String>,
    pub(crate) date: Option<String>,
    pub(crate) expires: Option<String>,
    pub(crate) last_modified: Option<String>,
    pub(crate) location: Option<String>,
    pub(crate) retry_after: Option<String>,
}

impl Transport {
    pub(crate) fn new(patience: Duration) -> Self {
        let config = Agent::config_builder().http_status_as_error(false).max_redirects(0);
        let config = config.timeout_global(Some(patience)).accept("application/geo+json, application/json");
        Self { agent: config.build().new_agent(), patience }
    }

    /// The answer, after at most two redirects within the same server.
    pub(crate) fn ask(&self, question: &Question<'_>) -> Result<Answer, Why> {
        let mut url = question.url.to_owned();
        for _ in 0..=REDIRECTS {
            let answer = self.once(&url, question)?;
            if !matches!(answer.status, 301 | 302 | 303 | 307 | 308) {
                return Ok(answer);
            }
            let to = answer.headers.location.unwrap_or_default();
            url = within(&url, &to).ok_or_else(|| Why::elsewhere(&to))?;
        }
        Err(Why::elsewhere(&url))
    }

    fn once(&self, url: &str, question: &Question<'_>) -> Result<Answer, Why> {
        let failed = |error: ureq::Error| self.why(&error);
        let here = url.parse::<Uri>().ok().and_then(|uri| uri.host().map(is_this_machine)).unwrap_or(false);
        let mut request = self.agent.get(url).header(header::USER_AGENT, question.user_agent);
        if let Some(since) = question.since {
            request = request.header(header::IF_MODIFIED_SINCE, since);
        }
        let config = request.config().https_only(!here);
        let request = if here { config.proxy(None).build() } else { config.build() };
        let mut response = request.call().map_err(failed)?;
        let status = response.status().as_u16();
        let headers = Headers::of(response.headers());
        let mut body = String::new();
        if matches!(status, 200 | 203) {
            let bytes = response.body_mut().with_config().limit(LARGEST_BODY).read_to_vec().map_err(failed)?;
            body = String::from_utf8(bytes).map_err(|_| Why::wrong("it is no text"))?;
        }
        Ok(Answer { status, headers, body })
    }

    fn why(&self, error: &ureq::Error) -> Why {
        match error {
            ureq::Error::Timeout(_) => Why::Slow { seconds: self.patience.as_secs().max(1) },
            ureq::Error::BodyExceedsLimit(_) => Why::TooBig { megabytes: LARGEST_BODY >> 20 },
            other => Why::Unreachable { detail: other.to_string() },
        }
    }
}

impl Headers {
    fn of(map: &HeaderMap) -> Self {
        let text = |name| map.get(name).and_then(|value| value.to_str().ok()).map(str::to_owned);
        Self {
            age: text(header::AGE),
            cache_control: text(header::CACHE_CONTROL),
            date: text(header::DATE),
            expires: text(header::EXPIRES),
            last_modified: text(header::LAST_MODIFIED),
            location: text(header::LOCATION),
            retry_after: text(header::RETRY_AFTER),
        }
    }
}

/// Where a page points to, if that is on the same server and by the same scheme.
pub(crate) fn within(from: &str, to: &str) -> Option<String> {
    let from: Uri = from.parse().ok()?;
    let (scheme, authority) = (from.scheme_str()?, from.authority()?);
    if to.starts_with('/') && !to.starts_with("//") {
        return Some(format!("{scheme}://{authority}{to}"));
    }
    let uri: Uri = to.parse().ok()?;
    (uri.scheme_str() == Some(scheme) && uri.authority() == Some(authority)).then(|| to.to_owned())
}

#[cfg(test)]
mod tests {
    use super::within;

    #[test]
    fn a_page_leads_to_its_own_server_alone() {
        let from = "https://weather.example/points/1,2";
        let to = |to| within(from, to);
        assert_eq!(to("/points/1.0,2").as_deref(), Some("https://weather.example/points/1.0,2"));
        assert_eq!(to("https://weather.example/a").as_deref(), Some("https://weather.example/a"));
        for elsewhere in [
            "http://weather.example/a",
            "https://other.example/a",
            "https://weather.example:8443/a",
            "https://keeper@weather.example/a",
            "//other.example/a",
            "a",
            "",
        ] {
            assert_eq!(to(elsewhere), None, "{elsewhere}");
        }
    }
}
