/*
 * The C library PROJ on the places of the benchmark "grids": processor seconds for each pass over them.
 *
 *   proj-peer FILE PASSES PIPELINE
 *
 * FILE holds pairs of doubles, latitude and longitude in degrees. PIPELINE takes latitude and longitude in degrees to easting and northing.
 * Printed: the best seconds of a pass forward, the best of a pass back, and the sums of the first place's results so that nothing is left out.
 */
#include <proj.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

static double processor_seconds(void)
{
    struct timespec now;
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &now);
    return now.tv_sec + now.tv_nsec * 1e-9;
}

static double best_pass(PJ *pipeline, PJ_DIRECTION direction, const PJ_COORD *from, PJ_COORD *to, size_t count, int passes)
{
    double best = 1e30;
    for (int pass = 0; pass < passes; pass++) {
        memcpy(to, from, count * sizeof *to);
        double start = processor_seconds();
        if (proj_trans_array(pipeline, direction, count, to) != 0)
            return -1;
        double used = processor_seconds() - start;
        if (used < best)
            best = used;
    }
    return best;
}

int main(int argc, char **argv)
{
    if (argc != 4)
        return 2;
    FILE *file = fopen(argv[1], "rb");
    if (!file || fseek(file, 0, SEEK_END) != 0)
        return 3;
    size_t count = (size_t)ftell(file) / (2 * sizeof(double));
    rewind(file);
    PJ_COORD *places = calloc(count, sizeof *places), *points = calloc(count, sizeof *points), *back = calloc(count, sizeof *back);
    for (size_t k = 0; k < count; k++) {
        if (fread(places[k].v, sizeof(double), 2, file) != 2)
            return 3;
    }
    fclose(file);
    PJ_CONTEXT *context = proj_context_create();
    PJ *pipeline = proj_create(context, argv[3]);
    if (!pipeline)
        return 4;
    double forward = best_pass(pipeline, PJ_FWD, places, points, count, atoi(argv[2]));
    double inverse = best_pass(pipeline, PJ_INV, points, back, count, atoi(argv[2]));
    printf("%.9f %.9f %.3f %.3f %.9f %.9f\n", forward, inverse, points[0].xy.x, points[0].xy.y, back[0].v[0], back[0].v[1]);
    proj_destroy(pipeline);
    proj_context_destroy(context);
    return 0;
}
