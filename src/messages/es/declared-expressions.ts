/** Words in the expressions of formulas, and the names of their inputs where they are words. Symbols stay as published. */
export const EXPRESSIONS: Readonly<Record<string, string>> = {
	"(A2 − A1) · 100 / (MD2 − MD1), by the shorter way round":
		"(A2 − A1) · 100 / (MD2 − MD1), por el lado más corto",
	"(V_open hole + V_cased) / V_annulus": "(V_agujero + V_entubado) / V_anular",
	"number of barriers, primary and secondary, in which every element holds":
		"número de barreras, primaria y secundaria, en que todo elemento resiste",
	"required − standing, no less than zero": "requeridas − resisten, no menor que cero",
	"p = p_t + (g − 0.052 ρ) D, no less than zero": "p = p_t + (g − 0.052 ρ) D, no menor que cero",
	"(hole − pipe) / 2": "(agujero − tubería) / 2",
	"(Δp − p) / Δp below the columns at rest; (p − p_f) / p_f above the final circulating pressure; else 0":
		"(Δp − p) / Δp por debajo de las columnas en reposo; (p − p_f) / p_f por encima de la presión final de circulación; si no, 0",
	"A = A_survey + turn, brought into 0 to 360°": "A = A_survey + giro, llevado a 0–360°",
	"D = √(∫ D(z)² dz / (MD_bottom − MD_top)), D(z) on the straight line between rows":
		"D = √(∫ D(z)² dz / (MD_bottom − MD_top)), D(z) en línea recta entre renglones",
	"F + (π/4) d² P against the lesser of pipe body and joint, worn, times Y_p(T)/Y_p":
		"F + (π/4) d² P contra el menor de cuerpo y junta, con desgaste, por Y_p(T)/Y_p",
	"F + 1780 v A_p against the lesser of pipe body and joint, worn, times Y_p(T)/Y_p":
		"F + 1780 v A_p contra el menor de cuerpo y junta, con desgaste, por Y_p(T)/Y_p",
	"F + f in cement, f = 2 ν (A_i Δp_i − A_o Δp_o) − α E A_p ΔT; F + ∫ (f / A_p) dL / ∫ dL / A_p over a free stretch":
		"F + f en cemento, f = 2 ν (A_i Δp_i − A_o Δp_o) − α E A_p ΔT; F + ∫ (f / A_p) dL / ∫ dL / A_p en un tramo libre",
	"F + σ_b A_p, σ_b = E κ D / 2, against the lesser of pipe body and joint, worn, times Y_p(T)/Y_p":
		"F + σ_b A_p, σ_b = E κ D / 2, contra el menor de cuerpo y junta, con desgaste, por Y_p(T)/Y_p",
	"F_e = F − p_i A_i + p_o A_o at the depth MD; tension positive":
		"F_e = F − p_i A_i + p_o A_o a la profundidad MD; tensión positiva",
	"T(D) = T_wh + (T_r − T_wh) D / D_r, T_r static at the foot of the well, D_r":
		"T(D) = T_wh + (T_r − T_wh) D / D_r, T_r estática en el fondo del pozo, D_r",
	"F = rating / design factor": "F = resistencia / factor de diseño",
	"F = √[(w_b L sin I − T ΔI)² + (T ΔA sin I)²], w_b = w (1 − ρ/65.5), T = w_b (D_shoe − D), ΔI down the hole":
		"F = √[(w_b L sin I − T ΔI)² + (T ΔA sin I)²], w_b = w (1 − ρ/65.5), T = w_b (D_shoe − D), ΔI hacia el fondo",
	"F against the lesser of pipe body and joint, worn, times Y_p(T)/Y_p; bending is judged apart, and with the triaxial stress":
		"F contra el menor de cuerpo y junta, con desgaste, por Y_p(T)/Y_p; la flexión se juzga aparte, y con el esfuerzo triaxial",
	"F(D) = Σ w ΔTVD + (p_i A_i − p_o A_o) at the shoe + p ΔA at each change of size; tension positive":
		"F(D) = Σ w ΔTVD + (p_i A_i − p_o A_o) en la zapata + p ΔA en cada cambio de diámetro; tensión positiva",
	"F_helical where compression / F_helical is greatest": "F_helical donde compresión / F_helical es máxima",
	"L = MD − L_collars, no less than zero": "L = MD − L_collars, no menor que cero",
	"MD at the least of √((N − N_path)² + (E − E_path)²)":
		"MD en el mínimo de √((N − N_path)² + (E − E_path)²)",
	"MD at the min over both paths of √(ΔN² + ΔE² + ΔTVD²)":
		"MD en el mín. sobre ambas trayectorias de √(ΔN² + ΔE² + ΔTVD²)",
	"MD at which rating / load is least": "MD donde resistencia / carga es mínima",
	"MD of the last station": "MD de la última estación",
	"MD of the other path at the min over both paths of √(ΔN² + ΔE² + ΔTVD²)":
		"MD de la otra trayectoria en el mín. sobre ambas de √(ΔN² + ΔE² + ΔTVD²)",
	"MD where compression / F_helical is greatest": "MD donde compresión / F_helical es máxima",
	"MD where Σ C_i L_i from MD_bottom upward = V": "MD donde Σ C_i L_i desde MD_bottom hacia arriba = V",
	"MD_plug = (MD_bottom cluster + MD_top cluster of the stage below) / 2":
		"MD_plug = (MD_bottom cluster + MD_top cluster de la etapa de abajo) / 2",
	"P (1 − wear)": "P (1 − desgaste)",
	"P = max(0, p_o − p_i) at the shoe + what is held over it":
		"P = max(0, p_o − p_i) en la zapata + lo que se mantiene además",
	"R = (Σ i N_i) mod 10, i counted from the right": "R = (Σ i N_i) mod 10, i contado desde la derecha",
	"R = ΔMD / β, β the angle between the directions at its ends [rad]":
		"R = ΔMD / β, β el ángulo entre las direcciones de sus extremos [rad]",
	"RF = (2/β) tan(β/2), β in radians": "RF = (2/β) tan(β/2), β en radianes",
	"ROE = 10^(0.39 log q + 1.91), q in scf of hydrogen sulfide":
		"ROE = 10^(0.39 log q + 1.91), q en scf de ácido sulfhídrico",
	"ROE = 10^(0.58 log q + 0.45), q in scf of hydrogen sulfide an hour":
		"ROE = 10^(0.58 log q + 0.45), q en scf de ácido sulfhídrico por hora",
	"ROE = 10^(0.66 log q + 0.69), q in scf of hydrogen sulfide an hour":
		"ROE = 10^(0.66 log q + 0.69), q en scf de ácido sulfhídrico por hora",
	"S − δ / c, δ = F L³ / (384 E I_p) · 24 (u²/2 − u tanh(u/2)) / u⁴, u² = T L² / (4 E I_p), I_p = π (D⁴ − d⁴) / 64, c = (D_hole − D) / 2, not below 0":
		"S − δ / c, δ = F L³ / (384 E I_p) · 24 (u²/2 − u tanh(u/2)) / u⁴, u² = T L² / (4 E I_p), I_p = π (D⁴ − d⁴) / 64, c = (D_hole − D) / 2, no menor que 0",
	"SF at each MD, σ_s = √((σ_r·MD/MD_end)² + (σ_o·MD_o/MD_o,end)² + σ_w²)":
		"SF en cada MD, σ_s = √((σ_r·MD/MD_end)² + (σ_o·MD_o/MD_o,end)² + σ_w²)",
	"T = w_b (D_shoe − D), w_b = w (1 − ρ/65.5), not below 0":
		"T = w_b (D_shoe − D), w_b = w (1 − ρ/65.5), no menor que 0",
	"T(D) = T_s + G (D − h) / 100, D below the datum, h its height above ground":
		"T(D) = T_s + G (D − h) / 100, D bajo el nivel de referencia, h su altura sobre el terreno",
	"TVD = D + a, D below the neighbor's own ground, a the datum above ground":
		"TVD = D + a, D bajo el terreno del vecino, a el nivel de referencia sobre el terreno",
	"TVD where the margin is least": "TVD donde el margen es mínimo",
	"TVD − height of the depth datum above ground": "TVD − altura del nivel de referencia sobre el terreno",
	"V = min(h C_bit, V_td), h along the hole": "V = min(h C_bit, V_td), h a lo largo del agujero",
	"Y_p(T) = Y_p [1 − r (T − 70 °F)], T above 70 °F": "Y_p(T) = Y_p [1 − r (T − 70 °F)], T mayor que 70 °F",
	"Y_pa = {√[1 − 0.75((σ_a+p_i)/Y_p)²] − 0.5 (σ_a+p_i)/Y_p} Y_p, σ_a + p_i no less than 0":
		"Y_pa = {√[1 − 0.75((σ_a+p_i)/Y_p)²] − 0.5 (σ_a+p_i)/Y_p} Y_p, σ_a + p_i no menor que 0",
	"Z = √(R² − (R−X)²) for X < R, else R": "Z = √(R² − (R−X)²) si X < R; si no, R",
	"a fluid pumped after S is at S_w − S, S_w the volume gone round; p_pump = p_out + Σ ΔP − p_in ≥ 0; where it would be less, S_w runs ahead of the pump until p_out + Σ ΔP = p_in; F = W + Σ p_in A − p_out (π/4) D²":
		"un fluido bombeado después de S está en S_w − S, S_w el volumen circulado; p_pump = p_out + Σ ΔP − p_in ≥ 0; donde sería menor, S_w se adelanta a la bomba hasta que p_out + Σ ΔP = p_in; F = W + Σ p_in A − p_out (π/4) D²",
	"atan2(E, N), brought into 0 to 360°": "atan2(E, N), llevado a 0–360°",
	"azimuth at the first place of the shortest line on the Clarke 1866 ellipsoid":
		"azimut en el primer lugar de la línea más corta sobre el Clarke 1866",
	"azimuth at the first place of the shortest line on the GRS 80 ellipsoid":
		"azimut en el primer lugar de la línea más corta sobre el GRS 80",
	"azimuth at the first place of the shortest line on the WGS 84 ellipsoid":
		"azimut en el primer lugar de la línea más corta sobre el WGS 84",
	"compression where compression / F_helical is greatest":
		"compresión donde compresión / F_helical es máxima",
	"each bore with its top, bottom and diameter": "cada tramo con su cima, base y diámetro",
	"each segment one arc (or straight) of its length, from where the one before ended to its own I and A":
		"cada segmento un arco (o recta) de su longitud, desde donde terminó el anterior hasta sus propios I y A",
	"each step with its slurry, rate, density and proppant":
		"cada paso con su lechada, gasto, densidad y apuntalante",
	"end of a line of length s from the wellhead on the Clarke 1866 ellipsoid":
		"extremo de una línea de longitud s desde la boca del pozo sobre el Clarke 1866",
	"end of a line of length s from the wellhead on the GRS 80 ellipsoid":
		"extremo de una línea de longitud s desde la boca del pozo sobre el GRS 80",
	"end of a line of length s from the wellhead on the WGS 84 ellipsoid":
		"extremo de una línea de longitud s desde la boca del pozo sobre el WGS 84",
	"ends of lines of √(N² + E²) at atan2(E, N) + γ from the wellhead on the Clarke 1866 ellipsoid":
		"extremos de líneas de √(N² + E²) a atan2(E, N) + γ desde la boca del pozo sobre el Clarke 1866",
	"ends of lines of √(N² + E²) at atan2(E, N) + γ from the wellhead on the GRS 80 ellipsoid":
		"extremos de líneas de √(N² + E²) a atan2(E, N) + γ desde la boca del pozo sobre el GRS 80",
	"ends of lines of √(N² + E²) at atan2(E, N) + γ from the wellhead on the WGS 84 ellipsoid":
		"extremos de líneas de √(N² + E²) a atan2(E, N) + γ desde la boca del pozo sobre el WGS 84",
	"first MD with I ≥ I_L − margin": "primera MD con I ≥ I_L − margen",
	"first volume pumped with S_w > S": "primer volumen bombeado con S_w > S",
	"first volume pumped with a margin below zero": "primer volumen bombeado con margen menor que cero",
	"from (N_w, E_w, ΔE_d) to (N_b, E_b, TVD_b + ΔE_d)": "de (N_w, E_w, ΔE_d) a (N_b, E_b, TVD_b + ΔE_d)",
	"greater of p_fluid and g (D − h) across the rock, p_fluid elsewhere; g the overburden gradient":
		"mayor de p_fluid y g (D − h) frente a la roca, p_fluid en lo demás; g el gradiente de sobrecarga",
	"greatest S_w − S": "máximo de S_w − S",
	"greatest VME in the wall where Y_p(T) / VME is least":
		"máximo VME en la pared donde Y_p(T) / VME es mínimo",
	"greatest VME in the wall, bending included, against Y_p(T)":
		"máximo VME en la pared, con flexión, contra Y_p(T)",
	"greatest VME of r = r_i and r_o, with σ_z = F/A_p ± E κ r":
		"máximo VME de r = r_i y r_o, con σ_z = F/A_p ± E κ r",
	"greatest p_pump over all steps, before the plug lands":
		"máxima p_pump de todos los pasos, antes de asentar el tapón",
	"hook load with the shoe at bottom": "carga al gancho con la zapata en el fondo",
	"how many stages are listed": "cuántas etapas están listadas",
	"how many stages have a plug below them": "cuántas etapas tienen un tapón debajo",
	"laminar PV v / (1000 (D − d)²) + YP / (200 (D − d)); turbulent ρ^0.75 v^1.75 PV^0.25 / (1396 (D − d)^1.25) from Re = 2,100, the greater; v = 17.157 Q / (D² − d²)":
		"laminar PV v / (1000 (D − d)²) + YP / (200 (D − d)); turbulento ρ^0.75 v^1.75 PV^0.25 / (1396 (D − d)^1.25) desde Re = 2,100, el mayor; v = 17.157 Q / (D² − d²)",
	"laminar PV v / (1500 d²) + YP / (225 d); turbulent ρ^0.75 v^1.75 PV^0.25 / (1800 d^1.25) from Re = 2,100, the greater; v = 17.157 Q / d²":
		"laminar PV v / (1500 d²) + YP / (225 d); turbulento ρ^0.75 v^1.75 PV^0.25 / (1800 d^1.25) desde Re = 2,100, el mayor; v = 17.157 Q / d²",
	"laminar f = 16 / Re; turbulent 1/√f = 4 log(Re √f) − 0.4":
		"laminar f = 16 / Re; turbulento 1/√f = 4 log(Re √f) − 0.4",
	"laminar f = 16 / Re; turbulent 1/√f = −4 log(ε / (3.7065 d) + 1.2613 / (Re √f))":
		"laminar f = 16 / Re; turbulento 1/√f = −4 log(ε / (3.7065 d) + 1.2613 / (Re √f))",
	"last MD with I = 0 above the first with I > 0": "última MD con I = 0 arriba de la primera con I > 0",
	"least F over all steps": "mínimo de F en todos los pasos",
	"least F_i / DF − P": "mínimo de F_i / DF − P",
	"least distance of T_test from T_top … T_bottom; none within":
		"menor distancia de T_test a T_top … T_bottom; ninguna si cae dentro",
	"least margin over all steps": "margen mínimo de todos los pasos",
	"least of margin / (0.052 D) over all steps": "mínimo de margen / (0.052 D) en todos los pasos",
	"least of p − p_pore over the open hole, at rest":
		"mínimo de p − p_pore en el agujero descubierto, en reposo",
	"least of p_f − (p + Σ ΔP) over the open hole": "mínimo de p_f − (p + Σ ΔP) en el agujero descubierto",
	"least of the limits": "el menor de los límites",
	"lesser of 0.95 A_jp U_p and 0.95 A_jp L [0.74 D^−0.59 U_p / (0.5 L + 0.14 D) + Y_p / (L + 0.14 D)], A_jp = 0.7854 [(D − 0.1425)² − d²], L = L_4 − M":
		"menor de 0.95 A_jp U_p y 0.95 A_jp L [0.74 D^−0.59 U_p / (0.5 L + 0.14 D) + Y_p / (L + 0.14 D)], A_jp = 0.7854 [(D − 0.1425)² − d²], L = L_4 − M",
	"lesser of 0.95 A_p U_p [1.008 − 0.0396 (1.083 − Y_p/U_p) D] and 0.95 A_c U_p, A_c = 0.7854 (W² − d_1²), d_1 = E_7 − (L_7 + I) T + 0.062":
		"menor de 0.95 A_p U_p [1.008 − 0.0396 (1.083 − Y_p/U_p) D] y 0.95 A_c U_p, A_c = 0.7854 (W² − d_1²), d_1 = E_7 − (L_7 + I) T + 0.062",
	"lesser of gas to surface and what the shoe allows":
		"menor de gas hasta superficie y lo que permite la zapata",
	"limit − value, or value − limit": "límite − valor, o valor − límite",
	"load where rating / load is least": "carga donde resistencia / carga es mínima",
	"max (compression / F_helical) along the string": "máx. (compresión / F_helical) a lo largo de la sarta",
	"max DLS over the path's intervals": "DLS máx. de los intervalos de la trayectoria",
	"max I over the path's stations": "I máx. de las estaciones de la trayectoria",
	"max TVD over the path down to MD: at MD, at a station, or where the hole is level":
		"TVD máx. de la trayectoria hasta MD: en MD, en una estación, o donde el agujero es horizontal",
	"max over the formations in the open hole": "máx. de las formaciones del agujero descubierto",
	"max over the formations, each at its base": "máx. de las formaciones, cada una en su base",
	"max ΔMD where I ≥ 5° at either end, but for the last interval":
		"máx. ΔMD donde I ≥ 5° en cualquier extremo, salvo el último intervalo",
	"min (rating / load) over the depths that are loaded":
		"mín. (resistencia / carga) en las profundidades con carga",
	"min (rating of the connection / load) over the depths that are loaded":
		"mín. (resistencia de la conexión / carga) en las profundidades con carga",
	"min (rating of the pipe / load) over the depths that are loaded":
		"mín. (resistencia de la tubería / carga) en las profundidades con carga",
	"min over MD of SF": "mín. de SF sobre MD",
	"min over both paths of √(ΔN² + ΔE² + ΔTVD²)": "mín. sobre ambas trayectorias de √(ΔN² + ΔE² + ΔTVD²)",
	"min over both paths of √(ΔN² + ΔE²)": "mín. sobre ambas trayectorias de √(ΔN² + ΔE²)",
	"min over path and line of √(ΔN² + ΔE²)": "mín. sobre la trayectoria y la línea de √(ΔN² + ΔE²)",
	"min over the line of √(N² + E²)": "mín. sobre la línea de √(N² + E²)",
	"N = s cos(A_true − γ), E = s sin(A_true − γ), s and A_true of the shortest line to each corner on the Clarke 1866 ellipsoid":
		"N = s cos(A_true − γ), E = s sin(A_true − γ), con s y A_true de la línea más corta a cada vértice en el elipsoide Clarke 1866",
	"N = s cos(A_true − γ), E = s sin(A_true − γ), s and A_true of the shortest line to each corner on the GRS 80 ellipsoid":
		"N = s cos(A_true − γ), E = s sin(A_true − γ), con s y A_true de la línea más corta a cada vértice en el elipsoide GRS 80",
	"N = s cos(A_true − γ), E = s sin(A_true − γ), s and A_true of the shortest line to each corner on the WGS 84 ellipsoid":
		"N = s cos(A_true − γ), E = s sin(A_true − γ), con s y A_true de la línea más corta a cada vértice en el elipsoide WGS 84",
	"min over pipe bodies and couplings": "mín. de cuerpos de tubería y coples",
	"min over the other path and MD_top ≤ MD ≤ MD_bottom of √(ΔN² + ΔE² + ΔTVD²)":
		"mín. sobre la otra trayectoria y MD_top ≤ MD ≤ MD_bottom de √(ΔN² + ΔE² + ΔTVD²)",
	"min over the other path and MD_top ≤ MD ≤ MD_bottom of √(ΔN² + ΔE²)":
		"mín. sobre la otra trayectoria y MD_top ≤ MD ≤ MD_bottom de √(ΔN² + ΔE²)",
	"min over the other path where TVD ≥ TVD_top and MD_top ≤ MD ≤ MD_bottom of √(ΔN² + ΔE²)":
		"mín. sobre la otra trayectoria donde TVD ≥ TVD_top y MD_top ≤ MD ≤ MD_bottom de √(ΔN² + ΔE²)",
	"min over the path of √((N − N_path)² + (E − E_path)²)":
		"mín. sobre la trayectoria de √((N − N_path)² + (E − E_path)²)",
	"min over the sections": "mín. de los tramos",
	"min(coupling yield, leak resistance at E_7)": "mín.(cedencia del cople, resistencia a fuga en E_7)",
	"min(max(x, from), to)": "mín.(máx.(x, desde), hasta)",
	"min(pipe body yield, joint strength)": "mín.(cedencia del cuerpo, resistencia de la junta)",
	"n = (MD_bottom − MD_top) / (k L_joint), rounded up":
		"n = (MD_bottom − MD_top) / (k L_joint), redondeado hacia arriba",
	"n = HHP / (h s), rounded up, + spare": "n = HHP / (h s), redondeado hacia arriba, + de reserva",
	"n = L / length of a joint, rounded up": "n = L / longitud de un tramo, redondeado hacia arriba",
	"n = V / V_s, to the nearest stroke": "n = V / V_s, al golpe más cercano",
	"n = V / V_t, rounded up": "n = V / V_t, redondeado hacia arriba",
	"n = m / p, rounded up": "n = m / p, redondeado hacia arriba",
	"n · joint": "n · tramo",
	"n_d = (n / N) ⌈r⌉, rounded up": "n_d = (n / N) ⌈r⌉, redondeado hacia arriba",
	"n_d = n / max(t, 1 d), rounded up": "n_d = n / max(t, 1 d), redondeado hacia arriba",
	"number of MD for which TVD(MD) is the depth asked for":
		"número de MD en que TVD(MD) es la profundidad pedida",
	"max of the lengths of stretches joined where they meet":
		"máx. de las longitudes de los tramos unidos donde se tocan",
	"number with n_i < 1": "cuántas con n_i < 1",
	"number with TVD_top ≤ z ≤ TVD_bottom": "cuántas con TVD_top ≤ z ≤ TVD_bottom",
	"number with TVD_top ≤ z_top and z_base ≤ TVD_bottom": "cuántas con TVD_top ≤ z_top y z_base ≤ TVD_bottom",
	"p = 0.052 ρ_pore D, D below ground": "p = 0.052 ρ_pore D, D bajo el terreno",
	"p = E' w_0 / (2 h), with w = 0.628 w_0": "p = E' w_0 / (2 h), con w = 0.628 w_0",
	"p = E' w_0 / (4 x_f), with w = π/4 w_0": "p = E' w_0 / (4 x_f), con w = π/4 w_0",
	"p = y (P + 14.7) / 10⁶, y in ppm of the gas, P the gauge pressure":
		"p = y (P + 14.7) / 10⁶, y en ppm del gas, P la presión manométrica",
	"p = π E' w_0 / (8 R), with w = 8/15 w_0": "p = π E' w_0 / (8 R), con w = 8/15 w_0",
	"p(D) = p_0 + Σ g (D_bottom − D_top), column by column":
		"p(D) = p_0 + Σ g (D_bottom − D_top), columna por columna",
	"p(D) between the changes of fluid": "p(D) entre los cambios de fluido",
	"p(D), straight between the profile's rows": "p(D), recta entre los renglones del perfil",
	"p_above(D) down to the packer, p_below(D) under it":
		"p_above(D) hasta el empacador, p_below(D) debajo de él",
	"p_e = p_o − (1 − 2t/D) p_i against the collapse rating of worn pipe with Y_pa(σ_a) at Y_p(T); method before 2015":
		"p_e = p_o − (1 − 2t/D) p_i contra la resistencia al colapso de tubería con desgaste con Y_pa(σ_a) a Y_p(T); método anterior a 2015",
	"p_pump at the last step, at the rate of the last fluid":
		"p_pump en el último paso, al gasto del último fluido",
	"pore 0.052 ρ_p (D − a); fracture F (D − a); gradients of rock act from ground level":
		"poro 0.052 ρ_p (D − a); fractura F (D − a); los gradientes de la roca actúan desde el nivel del terreno",
	"rating where rating / load is least": "resistencia donde resistencia / carga es mínima",
	"s(t) between tests, by the straight line; before the first, in proportion to time; after the last, the last":
		"s(t) entre pruebas, en línea recta; antes de la primera, en proporción al tiempo; después de la última, la última",
	"sacks = 1470 (W_2 − W_1) / (35 − W_2)": "sacos = 1470 (W_2 − W_1) / (35 − W_2)",
	"sacks = n, rounded up": "sacos = n, redondeado hacia arriba",
	"share × P": "parte × P",
	"shortest line between two places on the Clarke 1866 ellipsoid":
		"línea más corta entre dos lugares sobre el Clarke 1866",
	"shortest line between two places on the GRS 80 ellipsoid":
		"línea más corta entre dos lugares sobre el GRS 80",
	"shortest line between two places on the WGS 84 ellipsoid":
		"línea más corta entre dos lugares sobre el WGS 84",
	"t (1 − wear); P (1 − wear); F (1 − wear); stated collapse over calculated, k":
		"t (1 − desgaste); P (1 − desgaste); F (1 − desgaste); colapso declarado entre calculado, k",
	"t where s(t) = s, by the straight line between tests": "t donde s(t) = s, en línea recta entre pruebas",
	"t(S_w = X + S_2) − t(S_w = X + S_1), ended by the landing of the plug":
		"t(S_w = X + S_2) − t(S_w = X + S_1), hasta que asienta el tapón",
	"t_w = t (1 − wear)": "t_w = t (1 − desgaste)",
	"p_o − p_i against the collapse rating of worn pipe with Y_pa(σ_a + p_i) at Y_p(T); method from 2015":
		"p_o − p_i contra la resistencia al colapso de tubo gastado con Y_pa(σ_a + p_i) a Y_p(T); método desde 2015",
	"the four regimes with Y_pa for Y_p": "los cuatro regímenes con Y_pa en lugar de Y_p",
	"the four regimes with Y_pa(σ_a + p_i) for Y_p; compare with p_o − p_i":
		"los cuatro regímenes con Y_pa(σ_a + p_i) en lugar de Y_p; comparar con p_o − p_i",
	"the four regimes with Y_pa(σ_a) where rating / load is least":
		"los cuatro regímenes con Y_pa(σ_a) donde resistencia / carga es mínima",
	"the later of the wait on cement and the time to strength":
		"el mayor entre el tiempo de fraguado y el tiempo hasta la resistencia",
	"the least MD for which TVD(MD) is the depth asked for":
		"la menor MD en que TVD(MD) es la profundidad pedida",
	"trips = 2 n": "viajes = 2 n",
	"turn = δ_from − δ_to, each the angle of that north east of true north":
		"giro = δ_from − δ_to, cada uno el ángulo de ese norte al este del norte verdadero",
	"vertical to KOP; arc at B to I_L; straight for L; all at azimuth A":
		"vertical hasta KOP; arco a B hasta I_L; recta de L; todo con azimut A",
	"vertical to KOP; arc at B to θ; straight for √((R−X)² + Z² − R²), Z = TVD − KOP; all at azimuth A":
		"vertical hasta KOP; arco a B hasta θ; recta de √((R−X)² + Z² − R²), Z = TVD − KOP; todo con azimut A",
	"volume pumped where F is least": "volumen bombeado donde F es mínimo",
	"volume pumped where the margin is least": "volumen bombeado donde el margen es mínimo",
	"yield, plastic, transition or elastic collapse, by D/t":
		"colapso de cedencia, plástico, de transición o elástico, según D/t",
	"ΔF = W cos Ī + μ N, N = √[(F Δα sin Ī)² + (F ΔI + W sin Ī)²], from the shoe up; F + p_i A_i − p_o A_o":
		"ΔF = W cos Ī + μ N, N = √[(F Δα sin Ī)² + (F ΔI + W sin Ī)²], desde la zapata hacia arriba; F + p_i A_i − p_o A_o",
	"Δp = p_i − p_o against the lesser of pipe and coupling, worn, times Y_p(T)/Y_p":
		"Δp = p_i − p_o contra el menor de tubería y cople, con desgaste, por Y_p(T)/Y_p",
	"Δσ_k + 0.2369 q_k² ρ / (N² d⁴ C_d²) = P for every open cluster, Σ q_k = Q":
		"Δσ_k + 0.2369 q_k² ρ / (N² d⁴ C_d²) = P en cada cluster abierto, Σ q_k = Q",
	"Σ (ΔMD/2) · RF · (t1 + t2); straight past the last station":
		"Σ (ΔMD/2) · RF · (t1 + t2); recta después de la última estación",
	"Σ w ΔTVD + overpull against the lesser of pipe body and joint, worn, times Y_p(T)/Y_p":
		"Σ w ΔTVD + sobretensión contra el menor de cuerpo y junta, con desgaste, por Y_p(T)/Y_p",
	"σ_θ = a + b, a and b as for the radial stress": "σ_θ = a + b, a y b como en el esfuerzo radial",
	above: "arriba",
	annulus: "anular",
	below: "abajo",
	bottom: "fondo",
	column: "columna",
	coupling_yield: "cedencia_cople",
	course: "rumbo",
	dry: "seco",
	fluid: "fluido",
	force: "fuerza",
	from: "desde",
	height: "altura",
	hole: "agujero",
	hook_loads: "cargas_gancho",
	inside: "dentro",
	inside_before: "dentro_antes",
	job: "trabajo",
	joint: "junta",
	joints: "juntas",
	larger: "mayor",
	landed: "asentado",
	leak: "fuga",
	line: "línea",
	log: "registro",
	lower: "inferior",
	margin: "margen",
	margins: "márgenes",
	number: "número",
	of: "x",
	other: "otro",
	outside: "fuera",
	outside_before: "fuera_antes",
	over: "sobre",
	overpull: "sobretensión",
	parts: "partes",
	path: "trayectoria",
	pipe: "tubería",
	pressure: "presión",
	profile: "perfil",
	rating: "resistencia",
	ratings: "resistencias",
	sections: "tramos",
	separation: "separación",
	share: "parte",
	shoe: "zapata",
	smaller: "menor",
	stations: "estaciones",
	temperature: "temperatura",
	temperature_before: "temperatura_antes",
	to: "hasta",
	top: "cima",
	turn: "giro",
	upper: "superior",
	wait: "espera",
	wear: "desgaste",
	free_top: "cima_libre",
	free_bottom: "base_libre",
	bores: "tramos",
	batches: "baches",
	"x_f by Carter at w = π/4 · 3.22 (μ q x_f² / (E' h))^¼":
		"x_f de Carter con w = π/4 · 3.22 (μ q x_f² / (E' h))^¼",
	"x_f by Carter at w = 0.628 · 3.57 (μ q x_f / E')^¼": "x_f de Carter con w = 0.628 · 3.57 (μ q x_f / E')^¼",
	"R² = 2 q (4 w_0) / (30 π² C²) [e^(β²) erfc β + 2β/√π − 1], β = 15 C √(π t) / (4 w_0), w_0 at R":
		"R² = 2 q (4 w_0) / (30 π² C²) [e^(β²) erfc β + 2β/√π − 1], β = 15 C √(π t) / (4 w_0), w_0 en R",
	"A* of t* = [sin((1−f)β) t1 + sin(fβ) t2] / sin β": "A* de t* = [sin((1−f)β) t1 + sin(fβ) t2] / sin β",
	"I* of t* = [sin((1−f)β) t1 + sin(fβ) t2] / sin β": "I* de t* = [sin((1−f)β) t1 + sin(fβ) t2] / sin β",
	"D at min SF": "D en el SF mín.",
	"MD at min SF": "MD en el SF mín.",
	"F = 2 (2√2 − 1) √(E J w_c / r), w_c = w sin I + F κ; at least 5.55 (E J w²)^⅓; J = π (D⁴ − d⁴) / 64":
		"F = 2 (2√2 − 1) √(E J w_c / r), w_c = w sin I + F κ; al menos 5.55 (E J w²)^⅓; J = π (D⁴ − d⁴) / 64",
	"F = 2 √(E J w_c / r), w_c = w sin I + F κ; at least 1.94 (E J w²)^⅓; J = π (D⁴ − d⁴) / 64":
		"F = 2 √(E J w_c / r), w_c = w sin I + F κ; al menos 1.94 (E J w²)^⅓; J = π (D⁴ − d⁴) / 64",
	"MD where the hook load let down comes to nothing, or the shoe":
		"MD donde la carga al gancho al bajar llega a cero, o la zapata",
	"MD_foot = MD − L_collars, no less than zero": "MD_foot = MD − L_collars, no menor que cero",
	"axial force at the top of the string, without friction and pulled with the least and the greatest":
		"fuerza axial en el extremo superior de la sarta, sin fricción y levantada con la fricción mínima y la máxima",
	"axial force at the top: ΔF = W cos Ī − μ (N + N_h ΔL), N_h = r F² / (4 E J) where the compression is above that of helical buckling":
		"fuerza axial en el extremo superior: ΔF = W cos Ī − μ (N + N_h ΔL), N_h = r F² / (4 E J) donde la compresión supera la del pandeo helicoidal",
	"density at MD, between rows of the column": "densidad en MD, entre renglones de la columna",
	"dp/dL = 1.076 ρ V² f / (10⁵ d_h); f = (f_i¹² + f_l¹²)^(1/12), f_i = (f_tr⁻⁸ + f_t⁻⁸)^(−1/8), f_l = 16/Re, f_tr = 16 Re / (3470 − 1370 n)², f_t = a / Re^b, a = (log n + 3.93)/50, b = (1.75 − log n)/7; Re = ρ V² / (19.36 τ_w), τ_w = 1.066 [(3/2)ⁿ τ_y + k (2.4 V (2n + 1) / (3n d_h))ⁿ], d_h = D − d, V in ft/min":
		"dp/dL = 1.076 ρ V² f / (10⁵ d_h); f = (f_i¹² + f_l¹²)^(1/12), f_i = (f_tr⁻⁸ + f_t⁻⁸)^(−1/8), f_l = 16/Re, f_tr = 16 Re / (3470 − 1370 n)², f_t = a / Re^b, a = (log n + 3.93)/50, b = (1.75 − log n)/7; Re = ρ V² / (19.36 τ_w), τ_w = 1.066 [(3/2)ⁿ τ_y + k (2.4 V (2n + 1) / (3n d_h))ⁿ], d_h = D − d, V en ft/min",
	"dp/dL = 1.076 ρ V² f / (10⁵ d_h); f = (f_i¹² + f_l¹²)^(1/12), f_i = (f_tr⁻⁸ + f_t⁻⁸)^(−1/8), f_l = 16/Re, f_tr = 16 Re / (3470 − 1370 n)², f_t = a / Re^b, a = (log n + 3.93)/50, b = (1.75 − log n)/7; Re = ρ V² / (19.36 τ_w), τ_w = 1.066 [(4/3)ⁿ τ_y + k (1.6 V (3n + 1) / (4n d))ⁿ], d_h = d, V in ft/min":
		"dp/dL = 1.076 ρ V² f / (10⁵ d_h); f = (f_i¹² + f_l¹²)^(1/12), f_i = (f_tr⁻⁸ + f_t⁻⁸)^(−1/8), f_l = 16/Re, f_tr = 16 Re / (3470 − 1370 n)², f_t = a / Re^b, a = (log n + 3.93)/50, b = (1.75 − log n)/7; Re = ρ V² / (19.36 τ_w), τ_w = 1.066 [(4/3)ⁿ τ_y + k (1.6 V (3n + 1) / (4n d))ⁿ], d_h = d, V en ft/min",
	"hook load at the last MD": "carga al gancho en la última MD",
	"p = 0.052 ρ TVD + Σ G ΔMD from the surface down; as density p / (0.052 TVD)":
		"p = 0.052 ρ TVD + Σ G ΔMD desde la superficie hacia abajo; como densidad, p / (0.052 TVD)",
	"p = 0.052 ρ TVD − Σ G ΔMD from the surface down; as density p / (0.052 TVD)":
		"p = 0.052 ρ TVD − Σ G ΔMD desde la superficie hacia abajo; como densidad, p / (0.052 TVD)",
	"ΔP = 156.5 ρ Q² / (Σ N²)², gal/min, N in 32nds of an inch":
		"ΔP = 156.5 ρ Q² / (Σ N²)², gal/min, N en 32avos de pulgada",
	"τ_y = 2 R_3 − R_6, at least zero": "τ_y = 2 R_3 − R_6, al menos cero",
	"−(F − p_i A_i + p_o A_o), F let down with friction and the drag of coiled pipe; F_sinusoidal, F_helical there":
		"−(F − p_i A_i + p_o A_o), F al bajar con fricción y el arrastre de la tubería en hélice; F_sinusoidal y F_helical en ese punto",
	"least F_i / DF": "mínimo de F_i / DF",
	"C = Σ_sources Σ (∂r/∂p · w σ)(∂r/∂p · w σ)ᵀ; systematic and global sources summed along the hole, random ones by squares":
		"C = Σ_sources Σ (∂r/∂p · w σ)(∂r/∂p · w σ)ᵀ; fuentes sistemáticas y globales sumadas a lo largo del agujero, las aleatorias por cuadrados",
	"SF at each MD, σ_s = √(eᵀ C e + (σ_o·MD_o/MD_o,end)² + σ_w²), e from this hole to the nearest place of the other (pedal curve)":
		"SF en cada MD, σ_s = √(eᵀ C e + (σ_o·MD_o/MD_o,end)² + σ_w²), e de este agujero al lugar más cercano del otro (curva podaria)",
	"SF at each MD, σ_s = √(eᵀ (C + C_o) e + σ_w²), e from this hole to the nearest place of the other (pedal curves)":
		"SF en cada MD, σ_s = √(eᵀ (C + C_o) e + σ_w²), e de este agujero al lugar más cercano del otro (curvas podarias)",
	"ground elevation and height of the datum above ground":
		"elevación del terreno y altura de la referencia sobre el terreno",
	"every well of the pad": "todos los pozos de la plataforma",
	"schedules of the wells, the days between them counted in":
		"programas de los pozos, con los días entre uno y otro",
	"how many of: x_ρ < 10 %, x_G < 20 %, drive < 1, S < 70 %; none but the last where the flow is turbulent":
		"cuántos de: x_ρ < 10 %, x_G < 20 %, empuje < 1, S < 70 %; solo el último donde el flujo es turbulento",
	"ρ = (62.368 + 0.438603 S + 0.00160074 S²) / 7.4805, S in % by weight":
		"ρ = (62.368 + 0.438603 S + 0.00160074 S²) / 7.4805, S en % en peso",
	"ρ as by share, S such that S ρ is the solids in a volume":
		"ρ como por proporción, con S tal que S ρ son los sólidos en un volumen",
	"number with TVD_top < z and TVD_bottom ≥ z − 200 ft":
		"cuántos tienen TVD_top < z y TVD_bottom ≥ z − 200 ft",
};
