/* What is switched in an ordinary month: the household's draws, and the pump by night timer, minutes and floats. */
#ifndef SWITCHING_H
#define SWITCHING_H

#include "plant.h"

/** Heights that the solver is asked to find: where each float makes (rising) and breaks (falling). */
enum height { STOP_MAKES, STOP_BREAKS, DOSE_MAKES, DOSE_BREAKS, HEIGHTS };

struct switching {
    double height_m[HEIGHTS];
    int stopMade, doseMade;
    struct drive drive;
    /* The next draw edge, the next timer start, and when the running dose ends, s. */
    size_t edge, edges, start, starts;
    const double *edge_s, *flow_m3s, *start_h;
    double run_s, day_s, due_s;
};

struct switching atRest(void);
/** First instant known beforehand at which something is switched, s. */
double nextKnown(const struct switching *s);
/** Does what is due at such an instant; returns whether what drives the plant changed. */
int happen(struct switching *s, double t);
/** A float has passed a height; returns whether what drives the plant changed. */
int pass(struct switching *s, enum height which);

#endif
