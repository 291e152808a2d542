/* What a plot has, as far as words about its work depend on it. */
#ifndef TAKEOFF_WORK_FACTS_H
#define TAKEOFF_WORK_FACTS_H

#include "takeoff/work.h"

/* FACT(...) of a takeoff, all of them added up. */
uint64_t work_facts(const struct takeoff *takeoff, const struct labours *labours);

#endif
