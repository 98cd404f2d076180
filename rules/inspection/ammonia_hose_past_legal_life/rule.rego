# METADATA
# title: An ammonia hose is older than the state law allows
# description: |
#   Ohio has ammonia hose replaced five years after it was made, however it looks.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: [carries_ammonia, "regime=OAC 901:5-3-08"]
#   needs: [hoses.age_days]
#   message: "{part} is {have_days} old; the state law ends its use at {need_days}"
#   action: "Replace the hose."
#   basis:
#     - document: OAC 901:5-3-08
#       edition: ""
#       clause: "(F)"
#       standing: published
package rules.inspection.ammonia_hose_past_legal_life

report contains {"subject": h.id, "part": h.id, "have_days": h.age_days, "need_days": _longest_days} if {
	"OAC 901:5-3-08" in input.line.regimes
	some h in input.hoses
	h.carries_ammonia
	h.age_days > _longest_days
}

# Five years hold at least one leap day.
_longest_days := 1826
