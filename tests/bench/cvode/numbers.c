/* The file of numbers: on each line a name, how many, and the numbers. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "plant.h"

#define MOST 160

static struct entry {
    char name[64];
    size_t count;
    double *values;
} entries[MOST];
static size_t known;

static void fail(const char *what, const char *name)
{
    fprintf(stderr, "%s: %s\n", what, name);
    exit(1);
}

void readNumbers(const char *path)
{
    FILE *file = fopen(path, "r");
    if (!file) fail("cannot read", path);
    struct entry *e = entries;
    while (known < MOST && fscanf(file, "%63s %zu", e->name, &e->count) == 2) {
        e->values = malloc(e->count * sizeof *e->values);
        for (size_t i = 0; i < e->count; i++) {
            if (fscanf(file, "%lf", &e->values[i]) != 1) fail("too few numbers", e->name);
        }
        known += 1;
        e += 1;
    }
    if (!feof(file)) fail("too many names", path);
    fclose(file);
}

const double *numbers(const char *name, size_t *count)
{
    for (size_t i = 0; i < known; i++) {
        if (strcmp(entries[i].name, name) != 0) continue;
        *count = entries[i].count;
        return entries[i].values;
    }
    fail("no number is called", name);
    return NULL;
}

double number(const char *name)
{
    size_t count;
    const double *values = numbers(name, &count);
    if (count != 1) fail("not one number", name);
    return values[0];
}

#define AT(field) offsetof(struct plant, field)
static const struct {
    const char *name;
    size_t at;
} FIELDS[] = {
    { "plant.trash.outlet_m", AT(trash.outlet_m) },
    { "plant.trash.floor_m", AT(trash.floor_m) },
    { "plant.trash.ceiling_m", AT(trash.ceiling_m) },
    { "plant.trash.area_m2", AT(trash.area_m2) },
    { "plant.aeration.outlet_m", AT(aeration.outlet_m) },
    { "plant.aeration.floor_m", AT(aeration.floor_m) },
    { "plant.aeration.ceiling_m", AT(aeration.ceiling_m) },
    { "plant.aeration.area_m2", AT(aeration.area_m2) },
    { "plant.pump.floor_m", AT(pump.floor_m) },
    { "plant.pump.area_m2", AT(pump.area_m2) },
    { "plant.pump.inlet_m", AT(inlet_m) },
    { "plant.cleanOut_m", AT(cleanOut_m) },
    { "plant.pipeBore_m", AT(bore_m) },
    { "plant.clarifier.area_m2", AT(clarifier_m2) },
    { "plant.clarifier.straight_m", AT(straight_m) },
    { "plant.clarifier.hopper_m", AT(hopper_m) },
    { "plant.clarifier.slot_m2", AT(slot_m2) },
    { "plant.effluentPump.intake_m", AT(intake_m) },
    { "line.cleanFilter", AT(filterLoss) },
    { "line.shutoff_m", AT(shutoff_m) },
    { "line.pump", AT(pumpCurve) },
    { "line.friction", AT(friction) },
    { "line.nozzles", AT(nozzles) },
    { "line.nozzleElevation_m", AT(nozzle_m) },
    { "plant.air.free_Lmin", AT(free_Lmin) },
    { "plant.air.deadHead_kPa", AT(deadHead_kPa) },
    { "plant.air.exponent", AT(exponent) },
    { "plant.air.diffuser_elevation_m", AT(diffuser_m) },
    { "plant.air.cracking_kPa", AT(cracking_kPa) },
    { "plant.air.loss_kPa_per_Lmin2", AT(airLoss) },
    { "plant.air.transferPerMetre", AT(perMetre) },
    { "plant.air.transferReference_Lmin", AT(reference_Lmin) },
    { "plant.air.alpha", AT(alpha) },
    { "plant.air.beta", AT(beta) },
    { "oxygen.saturation_mgL", AT(saturation_mgL) },
    { "oxygen.transferFactor", AT(transferFactor) },
    { "plant.process.exchange_m3d", AT(exchange_m3d) },
    { "kinetics.biology.yieldA", AT(yieldA) },
    { "kinetics.biology.yieldH", AT(yieldH) },
    { "kinetics.biology.fP", AT(fP) },
    { "kinetics.biology.iXB", AT(iXB) },
    { "kinetics.biology.iXP", AT(iXP) },
    { "kinetics.biology.muH", AT(muH) },
    { "kinetics.biology.kS", AT(kS) },
    { "kinetics.biology.kOH", AT(kOH) },
    { "kinetics.biology.kNO", AT(kNO) },
    { "kinetics.biology.bH", AT(bH) },
    { "kinetics.biology.etaG", AT(etaG) },
    { "kinetics.biology.etaH", AT(etaH) },
    { "kinetics.biology.kH", AT(kH) },
    { "kinetics.biology.kX", AT(kX) },
    { "kinetics.biology.muA", AT(muA) },
    { "kinetics.biology.kNH", AT(kNH) },
    { "kinetics.biology.bA", AT(bA) },
    { "kinetics.biology.kOA", AT(kOA) },
    { "kinetics.biology.kA", AT(kA) },
    { "kinetics.biology.kAlkalinity", AT(kAlkalinity) },
    { "kinetics.settling.fastest_md", AT(fastest_md) },
    { "kinetics.settling.theoretical_md", AT(theoretical_md) },
    { "kinetics.settling.hindered_m3g", AT(hindered) },
    { "kinetics.settling.flocculant_m3g", AT(flocculant) },
    { "kinetics.settling.neverSettles", AT(neverSettles) },
    { "kinetics.settling.threshold_gm3", AT(threshold_gm3) },
    { "kinetics.settling.rounding", AT(rounding) },
    { "kinetics.thickest_gm3", AT(thickest_gm3) },
    { "kinetics.anaerobic", AT(anaerobic) },
    { "kinetics.digestion", AT(digestion) },
    { "kinetics.returned", AT(returned) },
    { "kinetics.dieOff", AT(dieOff) },
    { "stretch.captured", AT(captured) },
    { "stretch.floats", AT(floats) },
};

struct plant readPlant(void)
{
    struct plant p;
    size_t count;
    memset(&p, 0, sizeof p);
    for (size_t i = 0; i < sizeof FIELDS / sizeof FIELDS[0]; i++) {
        *(double *)((char *)&p + FIELDS[i].at) = number(FIELDS[i].name);
    }
    p.share = numbers("hopper.share", &count);
    if (count != LAYERS) fail("not as many layers as compiled in", "hopper.share");
    p.face_m2 = numbers("hopper.face_m2", &count);
    p.influent = numbers("influent", &count);
    return p;
}
