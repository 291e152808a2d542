/* A fence's runs from its legs.
 *
 * After every edit the runs are rebuilt in one form, which depends only on which sides of cells the
 * fence covers: legs are as long as they can be, those that meet end to end are one run, longer
 * ones than a run may be are several. Gates are in reading order, level ones first. */
#ifndef PLOT_EDIT_FENCE_REMAKE_H
#define PLOT_EDIT_FENCE_REMAKE_H

#include "plot/fence.h"

/* Gives a fence other legs and gates, which may overlap. Gates that no leg covers are removed, and
 * of gates that overlap the later ones. Takes what legs and gates hold and leaves both empty. */
void fence_remake(struct fence *fence, struct legs *legs, struct legs *gates);

#endif
