# METADATA
# title: A seal can get colder than it may
# description: |
#   A seal that is too cold shrinks and hardens. A leak while the line cools down is the usual sign.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: limits
#   scope: [is_seal]
#   needs: [limits.lowest_ck, limits.coldest_ck]
#   message: "The seal at {part} ({what}) is good down to {have_ck} but can reach {need_ck}"
#   action: "Fit a seal of a material made for this cold."
#   basis:
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.temperature.seal_below_limit

report contains {"subject": l.id, "part": l.part, "what": l.what, "have_ck": l.lowest_ck, "need_ck": l.coldest_ck} if {
	some l in input.limits
	l.is_seal
	l.lowest_ck > l.coldest_ck
}
