/* Water in the chambers and the air blown into it: the equations of works.ts, basin.ts, hydraulics.ts and air.ts. */
#include <math.h>

#include "plant.h"

static const double GRAVITY = 9.81, WEIR = 0.4133, EASE_M = 2e-3, DROWNED_EASE = 0.3, PRIME_M = 0.01;
static const double KPA_PER_METRE = 9.79;

static double clamp(double x, double low, double high)
{
    return fmin(fmax(x, low), high);
}

static double softRoot(double x, double e)
{
    return x / sqrt(sqrt(x * x + e * e));
}

static double gravityFlow(double up_m, double down_m, double invert_m, double bore_m)
{
    double depth = up_m - invert_m;
    if (up_m < down_m) return -gravityFlow(down_m, up_m, invert_m, bore_m);
    if (depth <= 0) return 0;
    double drowned = clamp(down_m - invert_m, 0, bore_m);
    double head = up_m - fmax(down_m, invert_m);
    double ease = 2 * GRAVITY * (EASE_M + DROWNED_EASE * drowned);
    return WEIR * bore_m * fmin(depth, bore_m) * softRoot(2 * GRAVITY * head, ease);
}

/* Where the pump's curve meets the line, L/s. */
static double pumpFlow(const struct plant *p, double lift_m)
{
    double head = p->shutoff_m - lift_m;
    if (head <= 0) return 0;
    double square = p->pumpCurve + p->nozzles + p->filterLoss;
    double q = sqrt(head / square);
    for (int i = 0; i < 30; i++) {
        double friction = p->friction * pow(q, 1.852);
        double step = (square * q * q + friction - head) / (2 * square * q + 1.852 * friction / q);
        q -= step;
        if (fabs(step) < 1e-12 * q) break;
    }
    return q;
}

static double discharge(const struct plant *p, double level_m)
{
    double prime = clamp((level_m - p->pump.floor_m - p->intake_m) / PRIME_M, 0, 1);
    return prime == 0 ? 0 : prime * pumpFlow(p, p->nozzle_m - level_m) / 1000;
}

void observe(const struct plant *p, const struct drive *d, const double *y, struct flows *f)
{
    f->trash_m = p->trash.floor_m + y[V_TRASH] / p->trash.area_m2;
    f->aeration_m = p->aeration.floor_m + y[V_AERATION] / p->aeration.area_m2;
    f->pump_m = p->pump.floor_m + y[V_PUMP] / p->pump.area_m2;
    f->trashOut = gravityFlow(f->trash_m, f->aeration_m, p->trash.outlet_m, p->bore_m);
    f->clarifierOut = gravityFlow(f->aeration_m, f->pump_m, p->aeration.outlet_m, p->bore_m);
    f->discharge = d->pumpRuns ? discharge(p, f->pump_m) : 0;
    f->slot = f->clarifierOut + (f->trashOut - f->clarifierOut) / p->aeration.area_m2 * p->clarifier_m2;
}

int isOrdinary(const struct plant *p, const struct flows *f)
{
    return f->trash_m < p->cleanOut_m && f->trash_m < p->trash.ceiling_m && f->aeration_m < p->aeration.ceiling_m &&
           f->aeration_m > p->aeration.outlet_m - p->straight_m && f->pump_m < p->inlet_m && f->clarifierOut >= 0;
}

/* The compressor's operating point with a sound line, by Newton's method within a bracket, step by step as air.ts. */
double diffuserFlow(const struct plant *p, double depth_m)
{
    double low = 0, high = p->free_Lmin, flow = 0.7 * p->free_Lmin, before = INFINITY, through = 0;
    for (int i = 0; i < 100; i++) {
        double left = 1 - flow / p->free_Lmin;
        double pressure = left <= 0 ? 0 : p->deadHead_kPa * pow(left, 1 / p->exponent);
        double spare = pressure - KPA_PER_METRE * fmax(0, depth_m) - p->cracking_kPa;
        through = spare <= 0 ? 0 : sqrt(spare / p->airLoss);
        double excess = flow - through, size = fabs(excess);
        if (size < 1e-7 * p->free_Lmin || high - low < 1e-12 * p->free_Lmin) break;
        if (excess > 0) high = flow;
        else low = flow;
        double falls = pressure / (p->exponent * (p->free_Lmin - flow));
        double slope = pressure <= 0 || through <= 0 ? 1 : 1 + falls / (2 * p->airLoss * through);
        double next = flow - excess / slope;
        int closesIn = size < before / 2 && next > low && next < high;
        flow = closesIn ? next : (low + high) / 2;
        before = closesIn ? size : INFINITY;
    }
    return through;
}
