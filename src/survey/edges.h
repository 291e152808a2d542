/* The account of all sides of cells between different letters, and of the corners where they
 * turn. */
#ifndef SURVEY_EDGES_H
#define SURVEY_EDGES_H

#include "survey/survey.h"

/* Fills out->edges, and perimeter, corners and holes of the regions, from runs whose regions are
 * known. Holes follow from the corners: each loop that runs round the region turns once (convex
 * less reflex is 4), each loop round a hole turns the other way (-4). */
void edges_account(struct survey *out, struct region *regions);

#endif
