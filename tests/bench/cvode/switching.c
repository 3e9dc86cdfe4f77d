#include "switching.h"

#include <math.h>

struct switching atRest(void)
{
    size_t count;
    struct switching s = {
        .height_m = { number("stopFloat.makes_m"), number("stopFloat.breaks_m"), number("doseFloat.makes_m"),
                      number("doseFloat.breaks_m") },
        .run_s = number("run_s"),
        .due_s = INFINITY,
    };
    s.edge_s = numbers("draws.t", &s.edges);
    s.flow_m3s = numbers("draws.flow_m3s", &count);
    s.start_h = numbers("starts_h", &s.starts);
    s.drive.inflow_m3s = s.flow_m3s[0];
    s.edge = 1;
    /* A start at the very beginning finds the pump tank low. */
    while (s.start < s.starts && s.start_h[s.start] == 0) s.start += 1;
    return s;
}

static double nextStart(const struct switching *s)
{
    return s->day_s + 3600 * s->start_h[s->start];
}

double nextKnown(const struct switching *s)
{
    double edge = s->edge < s->edges ? s->edge_s[s->edge] : INFINITY;
    return fmin(fmin(edge, s->due_s), nextStart(s));
}

int happen(struct switching *s, double t)
{
    int changed = 0;
    if (s->due_s == t) {
        changed = s->drive.pumpRuns;
        s->drive.pumpRuns = 0;
        s->due_s = INFINITY;
    }
    if (nextStart(s) == t) {
        s->start += 1;
        if (s->start == s->starts) {
            s->start = 0;
            s->day_s += DAY_S;
        }
        if (s->stopMade && s->doseMade) {
            s->drive.pumpRuns = changed = 1;
            s->due_s = t + s->run_s;
        }
    }
    if (s->edge < s->edges && s->edge_s[s->edge] == t) {
        s->drive.inflow_m3s = s->flow_m3s[s->edge];
        s->edge += 1;
        changed = 1;
    }
    return changed;
}

int pass(struct switching *s, enum height which)
{
    if (which == DOSE_MAKES || which == DOSE_BREAKS) {
        s->doseMade = which == DOSE_MAKES;
        return 0;
    }
    s->stopMade = which == STOP_MAKES;
    if (s->stopMade || !s->drive.pumpRuns) return 0;
    s->drive.pumpRuns = 0;
    s->due_s = INFINITY;
    return 1;
}
