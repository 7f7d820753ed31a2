\set i random(1, :tiles)
SELECT ST_AsMVT(f, 'presence', 4096, 'geom') FROM (
  SELECT s.reference AS square, s.grid, min(c.year) AS first, max(c.year) AS last, sum(c.records) AS records,
    sum(c.records) FILTER (WHERE c.year <= 1999) AS p0, sum(c.records) FILTER (WHERE c.year BETWEEN 2000 AND 2009) AS p1, sum(c.records) FILTER (WHERE c.year >= 2010) AS p2,
    ST_AsMVTGeom(s.geom, (SELECT box FROM tile WHERE id = :i), 4096, 64, true) AS geom
  FROM square s JOIN cube c ON c.square = s.id AND c.taxon = (SELECT taxon FROM tile WHERE id = :i)
  WHERE s.geom && (SELECT drawn FROM tile WHERE id = :i)
  GROUP BY s.id) f
WHERE geom IS NOT NULL;
