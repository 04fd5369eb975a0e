//! Laws without state: moist air, wall layers, air flow, snow, sun; one law a file.
