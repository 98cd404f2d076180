# METADATA
# title: A road delivery hose missed its monthly inspection
# description: |
#   The US road rule wants a look at the hose in each calendar month in service. Two months never have
#   more than 62 days, so the last one cannot lie further back than 61.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: ["regime=49 CFR 180.416"]
#   needs: [hoses.days_since_inspection]
#   message: >-
#     {part} was last inspected {have_days} ago; one look in each calendar month leaves {need_days} at
#     most
#   action: "Inspect the hose and record it before the next delivery."
#   basis:
#     - document: 49 CFR 180.416
#       edition: "CFR 2015 annual edition"
#       clause: "(d)(1)"
#       standing: published
package rules.inspection.monthly_inspection_missed

report contains {
	"subject": h.id,
	"part": h.id,
	"have_days": h.days_since_inspection,
	"need_days": _longest_days,
} if {
	"49 CFR 180.416" in input.line.regimes
	some h in input.hoses
	h.days_since_inspection > _longest_days
}

# From the first day of July to the last of August, or of December to the last of January.
_longest_days := 61
