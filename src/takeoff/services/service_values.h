/* The values in force for a service whose default depends on its kind, of a plot in force
 * (prices/in_force.h). */
#ifndef TAKEOFF_SERVICES_SERVICE_VALUES_H
#define TAKEOFF_SERVICES_SERVICE_VALUES_H

#include "plot/plot.h"

/* Whether it is known how deep the top of a service lies: of an existing one that is told, or it is
 * not; one to lay has a depth. */
bool service_has_depth(const struct service *service);
/* From the ground to the top of it: its own, else of one to lay as is usual, 0 of an existing one.
 * Usual is
 *
 *	power          24 in (600 mm): direct burial cable, NFPA 70, National Electrical Code, 2020,
 *	               Table 300.5, as quoted, the year from memory
 *	water          18 in (450 mm), and as deep as frost is allowed for
 *	gas, others    18 in (450 mm)
 *	telecom, drain 12 in (300 mm)
 *
 * all but the first common practice, no published source. What holds is local code. */
nm service_usual_depth(const struct plot *plot, enum service_kind kind);
nm service_depth(const struct plot *plot, const struct service *service);
/* How wide its trench is: its own, else as is usual: 12 in (300 mm) for a drain, 6 in (150 mm) for
 * others. */
nm service_usual_trench(const struct plot *plot, enum service_kind kind);
nm service_trench(const struct plot *plot, const struct service *service);

#endif
