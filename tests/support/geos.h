/* GEOS, a general-purpose geometry library, as an independent reference for areas, outlines and
 * offsets. Coordinates are plain numbers: cells or metres, as the test likes. */
#ifndef SUPPORT_GEOS_H
#define SUPPORT_GEOS_H

#include <geos_c.h>
#include <stddef.h>

struct geos_box {
	double left, top, right, bottom;
};

/* GEOS for one test; geos_end frees it. Geometries are freed with geos_free. */
GEOSContextHandle_t geos_start(void);
void geos_end(GEOSContextHandle_t geos);
void geos_free(GEOSContextHandle_t geos, GEOSGeometry *shape);

/* The union of boxes, whether they touch, overlap or stand apart. */
GEOSGeometry *geos_union(GEOSContextHandle_t geos, const struct geos_box *boxes, size_t count);
/* A ring of x, y pairs, without the first repeated at the end, as a polygon. */
GEOSGeometry *geos_ring(GEOSContextHandle_t geos, const double *xy, size_t points);

double geos_area(GEOSContextHandle_t geos, const GEOSGeometry *shape);
/* Length of the boundary, holes included. */
double geos_perimeter(GEOSContextHandle_t geos, const GEOSGeometry *shape);
/* Interior rings of all polygons of the shape. */
int geos_holes(GEOSContextHandle_t geos, const GEOSGeometry *shape);
int geos_polygons(GEOSContextHandle_t geos, const GEOSGeometry *shape);

/* New shapes. The offset keeps corners sharp (mitred): outwards, or inwards if by < 0. */
GEOSGeometry *geos_offset(GEOSContextHandle_t geos, const GEOSGeometry *shape, double by);
GEOSGeometry *geos_difference(GEOSContextHandle_t geos, const GEOSGeometry *a,
	const GEOSGeometry *b);
/* Area in only one of the two. */
double geos_apart(GEOSContextHandle_t geos, const GEOSGeometry *a, const GEOSGeometry *b);
/* The least distance between them, 0 where they touch. */
double geos_apart_by(GEOSContextHandle_t geos, const GEOSGeometry *a, const GEOSGeometry *b);
/* Area in both. */
double geos_common(GEOSContextHandle_t geos, const GEOSGeometry *a, const GEOSGeometry *b);

#endif
