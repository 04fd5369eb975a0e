/* A C library whose mathematics end one bit off wherever they are not exact: no library agrees with another there. */
#define _GNU_SOURCE
#include <dlfcn.h>
#include <math.h>

static double off(double x) { return isfinite(x) && x != nearbyint(x) ? nextafter(x, INFINITY) : x; }

#define ONE(name) \
    double name(double x) { return off(((double (*)(double))dlsym(RTLD_NEXT, #name))(x)); }
#define TWO(name) \
    double name(double x, double y) { return off(((double (*)(double, double))dlsym(RTLD_NEXT, #name))(x, y)); }

ONE(exp) ONE(exp2) ONE(expm1) ONE(log) ONE(log1p) ONE(log2) ONE(log10) ONE(cbrt)
ONE(sin) ONE(cos) ONE(tan) ONE(asin) ONE(acos) ONE(atan) ONE(sinh) ONE(cosh) ONE(tanh) ONE(tgamma)
TWO(pow) TWO(hypot) TWO(atan2)

void sincos(double x, double *s, double *c) { *s = sin(x); *c = cos(x); }

double lgamma_r(double x, int *sign) {
    return off(((double (*)(double, int *))dlsym(RTLD_NEXT, "lgamma_r"))(x, sign));
}
