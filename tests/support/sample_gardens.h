/* The gardens in plots/ by name, on each of which is tried what holds of every plot. That none is
 * missing here: tests/house/test_without_snags.c. */
#ifndef SUPPORT_SAMPLE_GARDENS_H
#define SUPPORT_SAMPLE_GARDENS_H

static const char *const sample_gardens[] = { "court", "elbow", "great-court", "growing-court",
	"ring", "rope-walk", "slope", "snags", "well-yard" };
enum { SAMPLE_GARDENS = sizeof sample_gardens / sizeof *sample_gardens };

#endif
