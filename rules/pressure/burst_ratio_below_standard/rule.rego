# METADATA
# title: A hose bursts too close to its working pressure
# description: |
#   Hoses are made with a reserve that depends on what they carry: most for steam, more for liquefied
#   gas than for liquids. The hose's own standard goes first where it says otherwise.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: []
#   needs: [hoses.burst_ratio_permille, hoses.rated_kpa]
#   absent: [hoses.class_ratio_permille]
#   message: >-
#     {part} bursts at {have_ratio_permille} times its working pressure; with {medium} it takes
#     {need_ratio_permille} times
#   action: >-
#     Fit a hose made for this service, or mark the hose down to a working pressure that leaves the
#     reserve.
#   basis:
#     - document: RMA IP-2 Hose Handbook
#       edition: "2003"
#       clause: "p. 50"
#       standing: published
#     - document: ISO 7751
#       edition: "2016"
#       clause: "burst ratios"
#       standing: recalled
package rules.pressure.burst_ratio_below_standard

report contains {
	"subject": h.id,
	"part": h.id,
	"medium": h.medium,
	"have_ratio_permille": h.burst_ratio_permille,
	"need_ratio_permille": _need(h),
} if {
	some h in input.hoses
	h.burst_ratio_permille < _need(h)
}

# The hose's own standard goes first.
_need(h) := h.class_ratio_permille if h.class_ratio_permille

else := 3000 if _low_water(h)

else := _by_medium[h.medium]

# Burst over working pressure by medium; water has the lower ratio only while its pressure is known to be low.
_by_medium := {"water": 4000, "liquid": 4000, "gas": 4000, "liquefied-gas": 5000, "steam": 10000}

# 150 psig = 1034.2 kPa, the bound of the source.
_low_water(h) if {
	h.medium == "water"
	h.rated_kpa <= 1034
}
