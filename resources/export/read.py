# Fits every line of the export anew with pandas, and says how far that is from estimates.csv.
# python3 read.py [FOLDER]; dictionary.csv says what each column is.
import sys
import numpy, pandas
folder = (sys.argv[1:] + ["."])[0]
key = ["athlete", "lift", "date", "session"]
points = pandas.read_csv(folder + "/points.csv")
told = pandas.read_csv(folder + "/estimates.csv").query("v0_m_s == v0_m_s")
fit = points.groupby(key).apply(lambda p: pandas.Series(
    numpy.polyfit(p.line_load_kg, p.point_velocity_m_s, 1) if p.line_load_kg.nunique() > 1 else [None, None], ["slope", "v0"], dtype=float))
lines = told.merge(fit.reset_index(), on=key)
lines["one_rm"] = (lines.mvt_m_s - lines.v0) / lines.slope
print("lines:", len(lines), "farthest 1RM:", (lines.one_rm - lines.one_rm_kg).abs().max(), "kg")
