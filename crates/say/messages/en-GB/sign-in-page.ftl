## The page "Sign in", and who is signed in.

sign-in-page-heading = Sign in
sign-in-page-lede = This is a keeper's yard. Its pages open with the pass phrase.
sign-in-page-phrase = Pass phrase
sign-in-page-forgotten = This browser then stays signed in for 30 days after its last visit, 180 days at most. Forgotten? At the machine itself, <code>snowhum serve --lan --new-pass-phrase</code> asks for another; <code>snowhum sign-in-code</code> tells a code that stands for it once.
sign-in-page-wrong = That is not the pass phrase. Nothing was opened.
sign-in-page-too-soon = Too many wrong tries. Wait { $wait }, then try again; or ask for a code at the machine itself, which is taken at once.
sign-in-page-seconds = { NUMBER($count) } seconds
sign-in-page-minutes = { NUMBER($count) } minutes

sign-in-page-signed-in = Signed in
sign-in-page-browsers = { $count ->
    [1] This browser alone is signed in.
   *[other] { NUMBER($count) } browsers are signed in, this one among them.
}
sign-in-page-sign-out = Sign out everywhere

sign-in-page-phrase-short = the pass phrase is too short; take at least { NUMBER($fewest) } letters, such as four words that have nothing to do with each other
sign-in-page-phrase-long = the pass phrase is too long; at most { NUMBER($most) } letters are read

sign-in-page-not-kept = Not kept yet
sign-in-page-again = You have to sign in again before this is kept.
sign-in-page-window = <a href="/sign-in" target="_blank">Sign in</a> in a window of its own, then go back here and send it again. What you wrote is still there.
