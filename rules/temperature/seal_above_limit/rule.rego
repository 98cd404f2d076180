# METADATA
# title: A seal can get hotter than it may
# description: |
#   A seal that is too hot softens, sets or creeps out of its seat, and the joint leaks under pressure
#   or when it cools.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: limits
#   scope: [is_seal]
#   needs: [limits.highest_ck, limits.hottest_ck]
#   message: "The seal at {part} ({what}) is good up to {have_ck} but can reach {need_ck}"
#   action: "Fit a seal of a material made for this temperature."
#   basis:
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.temperature.seal_above_limit

report contains {"subject": l.id, "part": l.part, "what": l.what, "have_ck": l.highest_ck, "need_ck": l.hottest_ck} if {
	some l in input.limits
	l.is_seal
	l.highest_ck < l.hottest_ck
}
