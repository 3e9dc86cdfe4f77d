/*
 * Thirty days of the coupled plant by SUNDIALS CVODE.
 *   plant check FILE                              greatest relative difference of right-hand sides from those in the file
 *   plant run FILE (bdf dense|adams none) RTOL    states at the samples, switchings of the pump, and what it cost
 */
#include <cvode/cvode.h>
#include <math.h>
#include <nvector/nvector_serial.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sundials/sundials_version.h>
#include <sunlinsol/sunlinsol_dense.h>
#include <sunmatrix/sunmatrix_dense.h>
#include <sunnonlinsol/sunnonlinsol_fixedpoint.h>
#include <sys/resource.h>

#include "switching.h"

struct run {
    struct plant plant;
    struct switching now;
    long rightHandSides;
};

static int derivative(realtype t, N_Vector y, N_Vector dy, void *user)
{
    struct run *r = user;
    (void)t;
    r->rightHandSides += 1;
    rightHandSide(&r->plant, &r->now.drive, N_VGetArrayPointer(y), N_VGetArrayPointer(dy));
    return 0;
}

static int heights(realtype t, N_Vector y, realtype *g, void *user)
{
    struct run *r = user;
    (void)t;
    double water_m = NV_Ith_S(y, V_PUMP) / r->plant.pump.area_m2;
    for (int i = 0; i < HEIGHTS; i++) g[i] = water_m - r->now.height_m[i];
    return 0;
}

static void stop(const char *why)
{
    fprintf(stderr, "%s\n", why);
    exit(1);
}

static void must(int flag, const char *what)
{
    if (flag < 0) stop(what);
}

static double cpu_ms(void)
{
    struct rusage u;
    getrusage(RUSAGE_SELF, &u);
    double s = (double)(u.ru_utime.tv_sec + u.ru_stime.tv_sec);
    return 1000 * s + (double)(u.ru_utime.tv_usec + u.ru_stime.tv_usec) / 1000;
}

/* Differences are shares of the greatest change of the same state: where it hardly changes, large terms cancel. */
static int check(void)
{
    struct plant p = readPlant();
    size_t count;
    const double *y = numbers("check.y", &count), *theirs = numbers("check.dy", &count);
    const double *inflow = numbers("check.inflow_m3s", &count), *pump = numbers("check.pumpRuns", &count);
    double greatest[SIZE] = { 0 }, apart[SIZE] = { 0 }, dy[SIZE], worst = 0;
    for (size_t n = 0; n < count; n++, y += SIZE, theirs += SIZE) {
        struct drive d = { inflow[n], pump[n] != 0 };
        rightHandSide(&p, &d, y, dy);
        for (int i = 0; i < SIZE; i++) {
            greatest[i] = fmax(greatest[i], fabs(theirs[i]));
            apart[i] = fmax(apart[i], fabs(dy[i] - theirs[i]));
        }
    }
    for (int i = 0; i < SIZE; i++) {
        if (apart[i] > 0) worst = fmax(worst, apart[i] / greatest[i]);
    }
    printf("version %s\nstates %zu\nworst %.3g\n", SUNDIALS_VERSION, count, worst);
    return 0;
}

static void printSample(double t, N_Vector y)
{
    printf("sample %.17g", t);
    for (int i = 0; i < SIZE; i++) printf(" %.17g", NV_Ith_S(y, i));
    printf("\n");
}

static void *solver(struct run *r, N_Vector y, const char *method, const char *linear, double rtol, SUNContext sun)
{
    size_t count;
    const double *unit = numbers("tolerances", &count);
    N_Vector atol = N_VNew_Serial(SIZE, sun);
    for (int i = 0; i < SIZE; i++) NV_Ith_S(atol, i) = rtol * unit[i];
    void *cvode = CVodeCreate(strcmp(method, "bdf") == 0 ? CV_BDF : CV_ADAMS, sun);
    must(CVodeInit(cvode, derivative, 0, y), "CVodeInit");
    must(CVodeSVtolerances(cvode, rtol, atol), "CVodeSVtolerances");
    must(CVodeSetUserData(cvode, r), "CVodeSetUserData");
    must(CVodeSetMaxNumSteps(cvode, -1), "CVodeSetMaxNumSteps");
    if (strcmp(linear, "dense") == 0) {
        SUNMatrix matrix = SUNDenseMatrix(SIZE, SIZE, sun);
        must(CVodeSetLinearSolver(cvode, SUNLinSol_Dense(y, matrix, sun), matrix), "CVodeSetLinearSolver");
    } else {
        must(CVodeSetNonlinearSolver(cvode, SUNNonlinSol_FixedPoint(y, 0, sun)), "CVodeSetNonlinearSolver");
    }
    int directions[HEIGHTS] = { 1, -1, 1, -1 };
    must(CVodeRootInit(cvode, HEIGHTS, heights), "CVodeRootInit");
    must(CVodeSetRootDirection(cvode, directions), "CVodeSetRootDirection");
    return cvode;
}

static int solve(const char *method, const char *linear, double rtol)
{
    struct run r = { .plant = readPlant(), .now = atRest() };
    SUNContext sun;
    must(SUNContext_Create(NULL, &sun), "SUNContext_Create");
    size_t count, sample = 0, samples;
    const double *start = numbers("start", &count), *sample_s = numbers("samples", &samples);
    N_Vector y = N_VNew_Serial(SIZE, sun);
    for (int i = 0; i < SIZE; i++) NV_Ith_S(y, i) = start[i];
    void *cvode = solver(&r, y, method, linear, rtol, sun);

    double t = 0, from_ms = cpu_ms();
    long steps = 0, more, restarts = 0;
    while (sample < samples) {
        double known = nextKnown(&r.now), to = fmin(known, sample_s[sample]);
        must(CVodeSetStopTime(cvode, known), "CVodeSetStopTime");
        int flag = CVode(cvode, to, y, &t, CV_NORMAL), changed = 0, ran = r.now.drive.pumpRuns;
        must(flag, "CVode");
        if (flag == CV_ROOT_RETURN) {
            int found[HEIGHTS];
            must(CVodeGetRootInfo(cvode, found), "CVodeGetRootInfo");
            for (int i = 0; i < HEIGHTS; i++) changed |= found[i] != 0 && pass(&r.now, i);
        }
        struct flows f;
        observe(&r.plant, &r.now.drive, N_VGetArrayPointer(y), &f);
        if (!isOrdinary(&r.plant, &f)) stop("the levels leave what the equations describe");
        if (t == sample_s[sample]) {
            printSample(t, y);
            sample += 1;
        }
        if (t == known) changed |= happen(&r.now, t);
        if (ran != r.now.drive.pumpRuns) printf("pump %.17g %d\n", t, r.now.drive.pumpRuns);
        if (!changed) continue;
        must(CVodeGetNumSteps(cvode, &more), "CVodeGetNumSteps");
        must(CVodeReInit(cvode, t, y), "CVodeReInit");
        steps += more;
        restarts += 1;
    }
    must(CVodeGetNumSteps(cvode, &more), "CVodeGetNumSteps");
    printf("cpu_ms %.17g\nsteps %ld\nrightHandSides %ld\nrestarts %ld\n", cpu_ms() - from_ms, steps + more,
           r.rightHandSides, restarts);
    return 0;
}

int main(int count, char **words)
{
    if (count >= 3) readNumbers(words[2]);
    if (count == 3 && strcmp(words[1], "check") == 0) return check();
    if (count == 6 && strcmp(words[1], "run") == 0) return solve(words[3], words[4], atof(words[5]));
    fprintf(stderr, "plant check FILE, or plant run FILE (bdf dense|adams none) RTOL\n");
    return 2;
}
