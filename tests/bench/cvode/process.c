/* Biology, settling and oxygen: the equations of process.ts, asm1.ts, hopper.ts, takacs.ts and oxygen.ts. Days, m3, g. */
#include <math.h>
#include <string.h>

#include "plant.h"

static const double FADES = 0.2, STEP = 0.2, OXYGEN_IN_AIR = 278, STANDARD_SATURATION = 9.092;
static const enum component FALLING[] = { XI, XS, XBH, XBA, XP, XND };
#define FALLING_COUNT (sizeof FALLING / sizeof FALLING[0])

/* Volumes, concentrations, and the change of every mass, g/d, while a right-hand side is worked out. */
struct scene {
    const struct plant *p;
    double volume[COMPARTMENTS];
    double c[SIZE];
    double *dy;
};

static double solidsOf(const double *c)
{
    return 0.75 * (c[XI] + c[XS] + c[XBH] + c[XBA] + c[XP]);
}

static void fillScene(struct scene *s, const double *y, const struct flows *f)
{
    const struct plant *p = s->p;
    double side = sqrt(p->slot_m2), top = side + (sqrt(p->clarifier_m2) - side);
    double hopper = p->hopper_m / 3 * (side * side + side * top + top * top);
    double foot = p->aeration.outlet_m - p->straight_m - p->hopper_m;
    double clarifier = hopper + (f->aeration_m - foot - p->hopper_m) * p->clarifier_m2;
    s->volume[TRASH] = y[V_TRASH];
    s->volume[AERATION] = y[V_AERATION] - clarifier;
    for (int i = 0; i < LAYERS; i++) s->volume[TOP + i] = clarifier * p->share[i];
    for (int k = 0; k < COMPARTMENTS; k++) {
        double per = 1 / s->volume[k];
        for (int i = 0; i < COMPONENTS; i++) s->c[ROW(k) + i] = y[ROW(k) + i] * per;
    }
}

/* What comes in, and what of it stays in the trash tank. */
static void bringIn(struct scene *s, double drawn)
{
    const struct plant *p = s->p;
    double *row = s->dy + ROW(TRASH), *store = s->dy + STORE;
    for (int i = 0; i < COMPONENTS; i++) row[i] += drawn * p->influent[i];
    for (size_t k = 0; k < FALLING_COUNT; k++) {
        int i = FALLING[k];
        double kept = p->captured * (drawn * p->influent[i]);
        row[i] -= kept;
        if (i == XND) store[NITROGEN] += kept;
        else if (i == XI || i == XP) store[INERT] += kept;
        else if (i == XS) {
            store[SCUM] += p->floats * kept;
            store[DEGRADABLE] += (1 - p->floats) * kept;
        } else {
            store[DEGRADABLE] += kept;
            store[NITROGEN] += p->iXB * kept;
        }
    }
}

static void mix(struct scene *s, int from, int to, double forth, double back)
{
    const double *a = s->c + ROW(from), *b = s->c + ROW(to);
    for (int i = 0; i < COMPONENTS; i++) {
        double rate = forth * a[i] - back * b[i];
        s->dy[ROW(from) + i] -= rate;
        s->dy[ROW(to) + i] += rate;
    }
}

static void carry(struct scene *s, const struct flows *f, double exchange)
{
    double trashOut = f->trashOut * DAY_S, slot = f->slot * DAY_S, clarifierOut = f->clarifierOut * DAY_S;
    double rise = slot - clarifierOut, up = slot;
    mix(s, TRASH, AERATION, fmax(0, trashOut), fmax(0, -trashOut));
    mix(s, AERATION, BOTTOM, exchange + fmax(0, slot), exchange + fmax(0, -slot));
    for (int i = LAYERS - 1; i > 0; i--) {
        up -= rise * s->p->share[i];
        mix(s, TOP + i, TOP + i - 1, fmax(0, up), fmax(0, -up));
    }
    for (int i = 0; i < COMPONENTS; i++) s->dy[ROW(TOP) + i] -= clarifierOut * s->c[ROW(TOP) + i];
}

static double velocity(const struct plant *p, double solids, double feed)
{
    double over = solids - p->neverSettles * feed;
    double v = p->theoretical_md * (exp(-p->hindered * over) - exp(-p->flocculant * over));
    return fmax(0, fmin(p->fastest_md, v));
}

static double fluxDown(const struct plant *p, double own, double below, double solidsBelow)
{
    double share = 0.5 + (solidsBelow - p->threshold_gm3) / (STEP * p->threshold_gm3);
    share = fmin(fmax(share, 0), 1);
    if (share == 0) return own;
    double apart = own - below, sum = p->rounding * (own + below);
    return (1 - share) * own + share * ((own + below - sqrt(apart * apart + sum * sum)) / 2);
}

static void settle(struct scene *s)
{
    const struct plant *p = s->p;
    double feed = fmax(0, solidsOf(s->c + ROW(AERATION))), solids[LAYERS], passing[LAYERS];
    for (int i = 0; i < LAYERS; i++) solids[i] = fmax(0, solidsOf(s->c + ROW(TOP + i)));
    double own = velocity(p, solids[0], feed) * solids[0];
    for (int i = 0; i < LAYERS - 1; i++) {
        double below = velocity(p, solids[i + 1], feed) * solids[i + 1];
        double room = fmin(fmax((p->thickest_gm3 - solids[i + 1]) / (FADES * p->thickest_gm3), 0), 1);
        passing[i] = fluxDown(p, own, below, solids[i + 1]) * room * p->face_m2[i];
        own = below;
    }
    passing[LAYERS - 1] = own * p->face_m2[LAYERS - 1];
    for (int i = 0; i < LAYERS; i++) {
        if (solids[i] == 0) continue;
        int from = ROW(TOP + i), to = ROW(i == LAYERS - 1 ? AERATION : TOP + i + 1);
        double water = passing[i] / solids[i];
        for (size_t k = 0; k < FALLING_COUNT; k++) {
            double rate = water * s->c[from + FALLING[k]];
            s->dy[from + FALLING[k]] -= rate;
            s->dy[to + FALLING[k]] += rate;
        }
    }
}

static void react(struct scene *s, int k)
{
    const struct plant *p = s->p;
    const double *c = s->c + ROW(k);
    double *dy = s->dy + ROW(k), v = s->volume[k], y[COMPONENTS];
    for (int i = 0; i < COMPONENTS; i++) y[i] = fmax(c[i], 0);

    double aerobic = y[SO] / (p->kOH + y[SO]);
    double anoxic = (1 - aerobic) * (y[SNO] / (p->kNO + y[SNO]));
    double fed = p->muH * (y[SS] / (p->kS + y[SS])) * y[XBH];
    double r1 = fed * aerobic, r2 = fed * anoxic * p->etaG;
    double r3 = p->muA * (y[SNH] / (p->kNH + y[SNH])) * (y[SO] / (p->kOA + y[SO])) * y[XBA];
    r3 *= y[ALK] / (p->kAlkalinity + y[ALK]);
    double r4 = p->bH * y[XBH], r5 = p->bA * y[XBA], r6 = p->kA * y[SND] * y[XBH];
    double held = p->kX * y[XBH] + y[XS];
    double hydrolysis = held > 0 ? p->kH * y[XBH] * (aerobic + p->etaH * anoxic) / held : 0;
    double r7 = hydrolysis * y[XS], r8 = hydrolysis * y[XND];

    double lost = (1 - p->yieldH) / p->yieldH, decay = r4 + r5;
    dy[SS] += v * (r7 - (r1 + r2) / p->yieldH);
    dy[XS] += v * ((1 - p->fP) * decay - r7);
    dy[XBH] += v * (r1 + r2 - r4);
    dy[XBA] += v * (r3 - r5);
    dy[XP] += v * (p->fP * decay);
    dy[SO] += v * (-lost * r1 - (4.57 - p->yieldA) / p->yieldA * r3);
    dy[SNO] += v * (r3 / p->yieldA - lost / 2.86 * r2);
    dy[SNH] += v * (r6 - p->iXB * (r1 + r2) - (p->iXB + 1 / p->yieldA) * r3);
    dy[SND] += v * (r8 - r6);
    dy[XND] += v * ((p->iXB - p->fP * p->iXP) * decay - r8);
    double taken = p->iXB / 14 * (r1 + r2 + r3);
    dy[ALK] += v * (lost / (14 * 2.86) * r2 + r6 / 14 - r3 / (7 * p->yieldA) - taken);
    dy[COLI] -= p->dieOff * v * c[COLI];
}

static void ferment(struct scene *s, const double *y)
{
    const struct plant *p = s->p;
    const double *c = s->c + ROW(TRASH), *lies = y + STORE;
    double *dy = s->dy + ROW(TRASH), *store = s->dy + STORE, perDay = s->volume[TRASH] * p->anaerobic;
    double dissolved = perDay * fmax(0, c[XS]), bound = perDay * fmax(0, c[XND]), freed = perDay * fmax(0, c[SND]);
    double digested = p->digestion * (lies[DEGRADABLE] + lies[SCUM]), nitrogen = p->digestion * lies[NITROGEN];
    dy[XS] -= dissolved;
    dy[SS] += dissolved + p->returned * digested;
    dy[XND] -= bound;
    dy[SND] += bound - freed;
    dy[SNH] += freed + nitrogen;
    dy[ALK] += (freed + nitrogen) / 14;
    store[DEGRADABLE] -= p->digestion * lies[DEGRADABLE];
    store[SCUM] -= p->digestion * lies[SCUM];
    store[NITROGEN] -= nitrogen;
}

/* Oxygen from so much air, L/min, at a depth. */
static void breathe(struct scene *s, double air_Lmin, double depth_m)
{
    const struct plant *p = s->p;
    double depthFactor = 1 + 0.03858 * fmax(0, depth_m);
    double efficiency = p->perMetre * depth_m * pow(air_Lmin / p->reference_Lmin, -0.15);
    double standard = air_Lmin / 60000 * OXYGEN_IN_AIR * efficiency;
    double volume = s->volume[AERATION];
    double transfer = p->alpha * p->transferFactor * standard / (volume * STANDARD_SATURATION * depthFactor) * DAY_S;
    double saturation = p->beta * p->saturation_mgL * depthFactor;
    s->dy[ROW(AERATION) + SO] += transfer * (saturation - s->c[ROW(AERATION) + SO]) * volume;
}

void rightHandSide(const struct plant *p, const struct drive *d, const double *y, double *dy)
{
    struct flows f;
    struct scene s = { .p = p, .dy = dy };
    observe(p, d, y, &f);
    fillScene(&s, y, &f);
    memset(dy, 0, SIZE * sizeof *dy);
    double depth = f.aeration_m - p->diffuser_m, air_Lmin = diffuserFlow(p, depth);
    bringIn(&s, d->inflow_m3s * DAY_S);
    carry(&s, &f, p->exchange_m3d * fmin(1, air_Lmin / p->reference_Lmin));
    settle(&s);
    for (int k = 0; k < COMPARTMENTS; k++) react(&s, k);
    ferment(&s, y);
    breathe(&s, air_Lmin, depth);
    for (int i = VOLUMES; i < SIZE; i++) dy[i] /= DAY_S;
    dy[V_TRASH] = d->inflow_m3s - f.trashOut;
    dy[V_AERATION] = f.trashOut - f.clarifierOut;
    dy[V_PUMP] = f.clarifierOut - f.discharge;
}
