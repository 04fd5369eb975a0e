//! Answers from winters: typed, serialisable, with evidence and words.
