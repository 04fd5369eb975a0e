//! Points, boxes and paths in the units of a picture's view: x to the right, y down.

/// A place in the view.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Point {
    /// To the right.
    pub x: f64,
    /// Down.
    pub y: f64,
}

/// An upright box in the view.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Rect {
    /// Left edge.
    pub x: f64,
    /// Upper edge.
    pub y: f64,
    /// To the right of `x`.
    pub width: f64,
    /// Down from `y`.
    pub height: f64,
}

/// An outline, drawn step by step.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Path {
    pub(crate) steps: Vec<Step>,
}

#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) enum Step {
    Move(Point),
    Line(Point),
    Curve(Point, Point),
    Circle(Point, f64),
    Box(Rect),
    Close,
}

impl Point {
    /// A place by its coordinates.
    #[must_use]
    pub const fn new(x: f64, y: f64) -> Self {
        Self { x, y }
    }

    pub(crate) fn moved(self, right: f64, down: f64) -> Self {
        Self { x: self.x + right, y: self.y + down }
    }

    pub(crate) fn is_finite(self) -> bool {
        self.x.is_finite() && self.y.is_finite()
    }
}

impl Rect {
    /// A box by its upper left corner and its size.
    #[must_use]
    pub const fn new(x: f64, y: f64, width: f64, height: f64) -> Self {
        Self { x, y, width, height }
    }

    /// A box by its edges, in whichever order they are given.
    pub(crate) fn between(x0: f64, x1: f64, y0: f64, y1: f64) -> Self {
        Self { x: x0.min(x1), y: y0.min(y1), width: (x1 - x0).abs(), height: (y1 - y0).abs() }
    }

    pub(crate) fn right(self) -> f64 {
        self.x + self.width
    }

    pub(crate) fn bottom(self) -> f64 {
        self.y + self.height
    }

    pub(crate) fn middle(self) -> Point {
        Point::new(self.x + self.width / 2.0, self.y + self.height / 2.0)
    }

    /// What two boxes share, if they share anything.
    pub(crate) fn shared(self, other: Self) -> Option<Self> {
        let (x0, x1) = (self.x.max(other.x), self.right().min(other.right()));
        let (y0, y1) = (self.y.max(other.y), self.bottom().min(other.bottom()));
        (x1 > x0 && y1 > y0).then(|| Self::between(x0, x1, y0, y1))
    }

    fn is_finite(self) -> bool {
        [self.x, self.y, self.width, self.height].into_iter().all(f64::is_finite)
    }
}

impl Path {
    /// Nothing drawn yet.
    #[must_use]
    pub const fn new() -> Self {
        Self { steps: Vec::new() }
    }

    /// A closed box.
    #[must_use]
    pub fn rect(rect: Rect) -> Self {
        Self { steps: vec![Step::Box(rect)] }
    }

    /// A closed circle.
    #[must_use]
    pub fn circle(centre: Point, radius: f64) -> Self {
        Self { steps: vec![Step::Circle(centre, radius)] }
    }

    /// One straight line.
    #[must_use]
    pub fn line(from: Point, to: Point) -> Self {
        Self::open(&[from, to])
    }

    /// A broken line through the points.
    #[must_use]
    pub fn open(points: &[Point]) -> Self {
        let step = |(at, point): (usize, &Point)| if at == 0 { Step::Move(*point) } else { Step::Line(*point) };
        Self { steps: points.iter().enumerate().map(step).collect() }
    }

    /// A closed outline through the points.
    #[must_use]
    pub fn closed(points: &[Point]) -> Self {
        let mut path = Self::open(points);
        path.steps.push(Step::Close);
        path
    }

    /// The outline between an upper and a lower line, both from left to right.
    #[must_use]
    pub fn band(upper: &[Point], lower: &[Point]) -> Self {
        let points: Vec<Point> = upper.iter().chain(lower.iter().rev()).copied().collect();
        Self::closed(&points)
    }

    /// One bow from `from` to `to`, drawn towards `bend`.
    #[must_use]
    pub fn bow(from: Point, bend: Point, to: Point) -> Self {
        Self { steps: vec![Step::Move(from), Step::Curve(bend, to)] }
    }

    /// The same outline with another one after it.
    #[must_use]
    pub fn and(mut self, other: Self) -> Self {
        self.steps.extend(other.steps);
        self
    }

    pub(crate) fn push(&mut self, other: Self) {
        self.steps.extend(other.steps);
    }

    pub(crate) fn is_empty(&self) -> bool {
        self.steps.is_empty()
    }

    /// Whether every step has a place; what has none is never written.
    pub(crate) fn is_finite(&self) -> bool {
        self.steps.iter().all(|step| match *step {
            Step::Move(to) | Step::Line(to) => to.is_finite(),
            Step::Curve(bend, to) => bend.is_finite() && to.is_finite(),
            Step::Circle(centre, radius) => centre.is_finite() && radius.is_finite(),
            Step::Box(rect) => rect.is_finite(),
            Step::Close => true,
        })
    }
}
