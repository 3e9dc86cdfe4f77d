/*
 * The plant's equations in C, for a unit without faults: what src/plant says, as far as an ordinary month asks for it.
 * Every number of the unit, its sludge and its household comes from a file that the benchmark writes. The constants of an
 * equation stand in it: the right-hand side is compared with TypeScript's before anything is measured.
 */
#ifndef PLANT_H
#define PLANT_H

#include <stddef.h>

#define COMPONENTS 14
#define LAYERS 5
#define COMPARTMENTS (2 + LAYERS)
#define DAY_S 86400.0

enum component { SI, SS, XI, XS, XBH, XBA, XP, SO, SNO, SNH, SND, XND, ALK, COLI };

/* State: three volumes, m3; a row of masses, g, by compartment, the clarifier's layers top first; what lies in the trash tank, g. */
enum volume { V_TRASH, V_AERATION, V_PUMP, VOLUMES };
#define ROW(k) (VOLUMES + COMPONENTS * (k))
#define STORE (VOLUMES + COMPONENTS * COMPARTMENTS)
enum store { DEGRADABLE, INERT, NITROGEN, SCUM, STORES };
#define SIZE (STORE + STORES)
#define TRASH 0
#define AERATION 1
#define TOP 2
#define BOTTOM (TOP + LAYERS - 1)

struct basin {
    double outlet_m, floor_m, ceiling_m, area_m2;
};

struct plant {
    /* Water. */
    struct basin trash, aeration, pump;
    double inlet_m, cleanOut_m, bore_m;
    double clarifier_m2, straight_m, hopper_m, slot_m2;
    double intake_m, filterLoss, shutoff_m, pumpCurve, friction, nozzles, nozzle_m;
    /* Air. */
    double free_Lmin, deadHead_kPa, exponent, diffuser_m, cracking_kPa, airLoss, perMetre, reference_Lmin, alpha, beta;
    double saturation_mgL, transferFactor, exchange_m3d;
    /* Biology and settling. */
    double yieldA, yieldH, fP, iXB, iXP, muH, kS, kOH, kNO, bH, etaG, etaH, kH, kX, muA, kNH, bA, kOA, kA, kAlkalinity;
    double fastest_md, theoretical_md, hindered, flocculant, neverSettles, threshold_gm3, rounding, thickest_gm3;
    double anaerobic, digestion, returned, dieOff, captured, floats;
    const double *share, *face_m2, *influent;
};

/** Flows, m3/s, and levels, m. */
struct flows {
    double trash_m, aeration_m, pump_m, trashOut, slot, clarifierOut, discharge;
};

/** What drives the plant between two events. */
struct drive {
    double inflow_m3s;
    int pumpRuns;
};

/** numbers.c: the file, and numbers in it by name; a name that is not there ends the program. */
void readNumbers(const char *path);
double number(const char *name);
const double *numbers(const char *name, size_t *count);
struct plant readPlant(void);

/** water.c: flows and levels at a state; air through the diffusers, L/min, at a depth of water over them. */
void observe(const struct plant *p, const struct drive *d, const double *y, struct flows *f);
double diffuserFlow(const struct plant *p, double depth_m);
/** Whether the levels are where these equations hold: nothing backs up or overflows, no tank is full. */
int isOrdinary(const struct plant *p, const struct flows *f);

/** process.c: dy/dt, 1/s. */
void rightHandSide(const struct plant *p, const struct drive *d, const double *y, double *dy);

#endif
